// Package report writes a judged design as one HTML page for a submittal: what
// was checked, what was found with its arithmetic, what each amplifier and line
// comes to, the schedules, and pictures.
//
// It owns the order and look of the page. It computes nothing: figures come from
// the result, tables from linter/schedule, pictures from linter/drawing. The page
// needs no network and no script, prints on A4 and Letter, follows a light or
// dark screen, and is the same for the same input. Every text goes through
// html/template, pictures excepted, which escape what they letter themselves.
// The command imports it.
package report
