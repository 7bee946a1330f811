package main

import (
	"io"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter"
	"loudlint/linter/report"
	"loudlint/linter/schedule"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// reportCommand makes the command that writes reports.
func reportCommand(p *Process) *cli.Command {
	var o onePage
	return &cli.Command{
		Name:      "report",
		Arguments: "[DESIGN]",
		Summary:   "write all there is to say about a design as one page",
		About: []string{
			"Writes one HTML file for a submittal: what was checked and by whose limits, findings with their arithmetic, deviations, open points, cautions, calculations of every amplifier and line, schedules and pictures.",
			"The file needs no network and no script, and prints on A4 and Letter. It is the same for the same design: a day stands in it only when --date gives one, and without it no deviation counts as expired.",
		},
		Flags: o.declareAll(p),
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "the report was written, whatever was found"},
			{Status: statusNotUnderstood, Means: "the design, or the call itself, could not be understood, or the report not be written"},
		},
		Examples: []cli.Example{{Line: "loudlint report --output hall.html hall" + schema.Ending, Does: "write the report of a design"}},
		Run: func(arguments []string) int {
			return o.run(arguments, p, "report", func(w io.Writer, j *linter.Judged) error {
				return report.Write(w, j, reportOptions(j, o.date))
			})
		},
	}
}

// reportOptions takes the band of the test sheet from the limits in force.
func reportOptions(j *linter.Judged, date quantity.Date) report.Options {
	options := report.Options{Tool: toolName(), Schedules: schedule.Usual()}
	options.Schedules.Tool = options.Tool
	if !date.IsZero() {
		options.Date = date.String()
	}
	readingBand(&options.Schedules, j.InForce)
	return options
}
