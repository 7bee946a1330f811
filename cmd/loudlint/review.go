package main

import (
	"io"
	"slices"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/markdown"
	"loudlint/linter/review"
	"loudlint/linter/textout"
	"loudlint/schema"
)

const formMarkdown = "markdown"

// reviewing holds the flags of review.
type reviewing struct {
	format string
	gate   string
	passes bool
	onePage
	page pageFlags
}

func reviewCommand(p *Process) *cli.Command {
	r := &reviewing{format: formText, gate: check.Warning.String()}
	flags := slices.Concat([]*cli.Flag{
		cli.Word(&r.format, "format", "form of the review: a page for people (text, the default) or Markdown, to paste into a letter (markdown)",
			cli.Choice{Word: formText, Says: "a page for people"}, cli.Choice{Word: formMarkdown, Says: "Markdown"}),
		gateFlag(&r.gate, "least severity that keeps a design from being accepted, and makes the exit status 1 (default warning); with never, the exit status is 0 whatever is recommended"),
		cli.Switch(&r.passes, "passes", "show the figures of each part that meets what is asked, too"),
	}, r.declareAll(p), r.page.declare())
	r.date = p.Today // an agreement that is over is none
	return &cli.Command{
		Name:      "review",
		Arguments: "[DESIGN]",
		Summary:   "answer a submittal: each criterion against every part it applies to",
		About: []string{
			"Judges one design and writes the reviewer's answer: what is recommended, a matrix of every criterion with how many parts do not meet it, cannot be judged, depart from it by agreement and meet it, then numbered comments with their arithmetic, what is still to be supplied and in which document it is looked for, and the figures by which the rest is met. Parts of which the same is said are named together.",
			"The criteria are those of the files named with --criteria, or where none is named those of the design itself. What loudlint asks beyond them stands apart, and counts too.",
			"It recommends; the decision is the reviewer's.",
		},
		Flags: flags,
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "recommended: accept, or accept with comments that are less grave than the gate"},
			{Status: statusFindings, Means: "recommended: return with comments, or cannot be judged yet"},
			{Status: statusNotUnderstood, Means: "the design, the criteria or the call could not be understood, or the review not be written"},
		},
		Examples: []cli.Example{
			{Line: "loudlint review --criteria client" + schema.Ending + " hall" + schema.Ending, Does: "hold a submittal against a client's criteria"},
			{Line: "loudlint review --criteria client" + schema.Ending + " --format markdown --output review.md hall", Does: "write the answer for a letter"},
		},
		Run: func(arguments []string) int { return r.run(arguments, p) },
	}
}

func (r *reviewing) run(arguments []string, p *Process) int {
	status := statusPassed
	failed := r.onePage.run(arguments, p, "review", func(w io.Writer, j *linter.Judged) error {
		answer := review.Of(j, review.Options{Gate: r.least(), Only: r.only})
		if r.gate != gateNever && answer.Verdict >= review.NotYet {
			status = statusFindings
		}
		if r.format == formMarkdown {
			return markdown.WriteReview(w, answer, markdown.Options{Passes: r.passes})
		}
		o := r.page.options(p, r.output)
		o.Passes = r.passes
		return textout.WriteReview(w, answer, o)
	})
	return max(failed, status)
}

// least is the severity that keeps a design from being accepted: what is
// recommended does not depend on what the exit status is used for.
func (r *reviewing) least() check.Severity {
	if least, some := check.ParseSeverity(r.gate); some {
		return least
	}
	return check.Warning
}
