// Command loudlint judges public-address designs: see its README, or call it
// with help.
//
// It owns flags, exit status and what goes to which stream; each command is one
// file. It computes nothing and words nothing about designs: that is done by the
// packages it hands its options to. Nobody imports it.
package main
