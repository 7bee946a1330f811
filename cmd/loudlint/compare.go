package main

import (
	"fmt"
	"io"
	"path/filepath"
	"slices"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/cmd/loudlint/internal/revision"
	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/compare"
	"loudlint/linter/sarif"
	"loudlint/linter/textout"
	"loudlint/schema"
)

// comparing holds the flags of compare.
type comparing struct {
	from, to string
	format   string
	output   string
	gate     string
	judging
	page pageFlags
}

func compareCommand(p *Process) *cli.Command {
	c := &comparing{format: formText, gate: check.Warning.String()}
	return &cli.Command{
		Name:      "compare",
		Arguments: "OLD [NEW]",
		Summary:   "tell what changed between two revisions of a design",
		About: []string{
			"Judges two designs, of which one is an older revision of the other, and tells which findings are new, gone and still there, which figures moved and by how much, and which parts were added, removed or renamed. A part that was renamed is known when it says what it was formerly called, or when it alone says the same as before.",
			"Each is a file or a folder. With --from, OLD is read as it was in a revision of the git repository it lies in, and with --to NEW is; NEW may be left out when it is at the same path. A revision is whatever git takes for one: a tag, a branch, HEAD~1. Nothing is checked out.",
		},
		Flags: slices.Concat([]*cli.Flag{
			{Name: "from", Value: "REVISION", Doc: "read OLD as it was in a git revision", Offer: func() []cli.Choice { return nil }, Set: notEmpty(&c.from, "from")},
			{Name: "to", Value: "REVISION", Doc: "read NEW as it was in a git revision", Offer: func() []cli.Choice { return nil }, Set: notEmpty(&c.to, "to")},
			cli.Word(&c.format, "format", "form of the result: a page for people (text, the default), a line for each thing that changed (lines), or the new design in SARIF 2.1.0 with a baselineState on each result (sarif)",
				cli.Choice{Word: formText, Says: "a page for people"}, cli.Choice{Word: formLines, Says: "one line per change"}, cli.Choice{Word: formSARIF, Says: "SARIF 2.1.0"}),
			outputFlag(&c.output, "the result", ""),
			gateFlag(&c.gate, "least severity of a new finding that makes the exit status 1 (default warning); with never, none does"),
		}, c.declare(p), c.page.declare()),
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "both were judged, and no finding that is new, or graver than before, is as grave as the gate"},
			{Status: statusFindings, Means: "both were judged, and such a finding is as grave as the gate or graver"},
			{Status: statusNotUnderstood, Means: "a design, a revision or the call could not be understood, or the result not be written; nothing was compared"},
		},
		Examples: []cli.Example{
			{Line: "loudlint compare hall_b" + schema.Ending + " hall_c" + schema.Ending, Does: "revision C against revision B, each a file"},
			{Line: "loudlint compare --from v1.0 hall", Does: "the folder as it is now against that of a tag"},
			{Line: "loudlint compare --from main --to HEAD --format sarif hall", Does: "what a branch changes, for a code-scanning service"},
		},
		Run: func(arguments []string) int { return c.run(arguments, p) },
	}
}

// notEmpty sets a text of a flag whose value is no file.
func notEmpty(to *string, flag string) func(string) error {
	return cli.Text(to, flag, "", "").Set
}

// sides gives what is compared with what: the paths of both designs.
func (c *comparing) sides(arguments []string) (older, newer string, err error) {
	if slices.Contains(arguments, "") || slices.Contains(arguments, "-") {
		return "", "", &cli.CallError{Found: "An empty name is no design.", Hint: "A design is a file or a folder."}
	}
	switch {
	case len(arguments) == 2:
		older, newer = filepath.Clean(arguments[0]), filepath.Clean(arguments[1])
	case len(arguments) == 1 && c.from+c.to != "":
		older = filepath.Clean(arguments[0])
		newer = older
	case len(arguments) == 1:
		return "", "", &cli.CallError{Found: fmt.Sprintf("Nothing is named that %s is compared with.", arguments[0]), Hint: "Name two designs, the older one first, or a git revision with --from."}
	default:
		return "", "", &cli.CallError{Found: fmt.Sprintf("compare takes two designs, and there are %d.", len(arguments)), Hint: "The older one comes first."}
	}
	if older == newer && c.from == c.to {
		return "", "", &cli.CallError{Found: "Both designs are the same.", Hint: "Name two, or a git revision with --from."}
	}
	return older, newer, nil
}

func (c *comparing) run(arguments []string, p *Process) int {
	older, newer, err := c.sides(arguments)
	if err == nil {
		err = refuseOutput(c.output, []string{older, newer})
	}
	if err != nil {
		return p.misunderstood(err, "help compare")
	}
	options, ok := c.options(p)
	if !ok {
		return statusNotUnderstood
	}
	both := &linter.Result{Checks: options.Checks, Designs: []*linter.Judged{judgeAt(older, c.from, options), judgeAt(newer, c.to, options)}}
	if err := knownCriterions(c.only, both); err != nil {
		return p.misunderstood(err, "criteria")
	}
	if !both.Understood() {
		p.sayProblems(both.Designs...)
		return p.failed(fmt.Errorf("nothing was compared: %s", notJudged(both, nameAt(older, c.from), nameAt(newer, c.to))))
	}
	comparison := compare.Compare(both.Designs[0], both.Designs[1], nameAt(older, c.from), nameAt(newer, c.to))
	result := &linter.Result{Checks: options.Checks, Designs: both.Designs[1:]}
	status := statusOf(both.Designs[1], c.gate)
	write := func(w io.Writer) error { return c.write(w, comparison, result, status, p) }
	if c.output == "" {
		return max(status, p.say(p.Out, write))
	}
	if err := save(c.output, both, options.Specification, write); err != nil {
		return p.failed(err)
	}
	return status
}

// notJudged names the sides that could not be judged.
func notJudged(both *linter.Result, older, newer string) string {
	names := []string{older, newer}
	switch {
	case both.Designs[0].Understood():
		return names[1] + " could not be judged"
	case both.Designs[1].Understood():
		return names[0] + " could not be judged"
	}
	return "neither " + names[0] + " nor " + names[1] + " could be judged"
}

// judgeAt judges a design as it is on disk, or as it was in a revision.
func judgeAt(path, rev string, options linter.Options) *linter.Judged {
	if rev == "" {
		return linter.Check([]string{path}, options).Designs[0]
	}
	design, problems, err := revision.Load(path, rev, schema.Options{Folders: options.Folders, Workers: options.Workers})
	if err != nil || len(problems) > 0 {
		return &linter.Judged{Name: filepath.ToSlash(path), Err: err, Problems: problems}
	}
	return linter.Judge(design, options)
}

// nameAt is what people call one side.
func nameAt(path, rev string) string {
	name := filepath.ToSlash(path)
	if rev != "" {
		name += " at " + rev
	}
	return name
}

func (c *comparing) write(w io.Writer, comparison *compare.Comparison, r *linter.Result, status int, p *Process) error {
	switch c.format {
	case formSARIF:
		return sarif.Write(w, r, sarifTool(&status))
	case formLines:
		return textout.WriteComparisonLines(w, comparison)
	}
	return textout.WriteComparison(w, comparison, c.page.options(p, c.output))
}
