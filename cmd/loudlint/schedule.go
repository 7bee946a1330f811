package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/cmd/loudlint/internal/wholefile"
	"loudlint/linter"
	"loudlint/linter/analysis"
	"loudlint/linter/schedule"
	"loudlint/linter/sheet"
	"loudlint/linter/textout"
	"loudlint/rules"
	"loudlint/schema"
	"loudlint/schema/quantity"
)

// Forms of a schedule besides formText.
const (
	formCSV  = "csv"
	formXLSX = "xlsx"
)

// allKinds stands for every kind of schedule.
const allKinds = "all"

// scheduling holds the flags of schedule.
type scheduling struct {
	format  string
	output  string
	replace bool
	folders []string
	workers int
	options schedule.Options
	page    pageFlags
}

func scheduleCommand(p *Process) *cli.Command {
	c := &scheduling{options: schedule.Usual()}
	page := c.page.declare()
	page[slices.IndexFunc(page, func(f *cli.Flag) bool { return f.Name == "width" })].Doc = "width of the page (default: that of the terminal, else 96)"
	return &cli.Command{
		Name:      "schedule",
		Arguments: "KIND[,KIND...] [DESIGN]",
		Summary:   "write tables to order, wire and test by",
		About: []string{
			"Writes schedules of a design: " + kindsInWords() + "; all of them with " + allKinds + ". Every figure is the one the checks judge.",
			"As text, rows that the design writes as one run are one row. As CSV (RFC 4180) or as a spreadsheet (XLSX) every device has a row of its own, numbers are numbers, and units stand in the head. " +
				"In CSV a text that a spreadsheet program could take for a formula has an apostrophe in front; loudlint import takes it off again.",
			"A CSV file holds one table. Several kinds as CSV go into a folder that --output names, a file for each; the folder is made if it is not there.",
			"Without a DESIGN, the current folder is the design.",
		},
		Flags: append([]*cli.Flag{
			cli.Word(&c.format, "format", "form of the schedule; without it, what the ending of --output says, else text",
				cli.Choice{Word: formText, Says: "a page for people"}, cli.Choice{Word: formCSV, Says: "comma-separated values, a file for each kind"}, cli.Choice{Word: formXLSX, Says: "a spreadsheet, one sheet a kind"}),
			outputFlag(&c.output, "", "; several kinds as CSV go into a folder of this name"),
			cli.Switch(&c.replace, "replace", "let --output replace files that are there, but never a design"),
			percentFlag(&c.options.CuttingAllowance, "allowance", "what is added to cable for cutting and ends (default 10 %)"),
			lengthFlag(&c.options.Drum, "drum", "how much cable is on a drum (default 100 m, or 1000 ft for designs in US units)"),
			percentFlag(&c.options.Spares, "spares", "how many more loudspeakers and attenuators are ordered, rounded up for each model (default 5 %)"),
			cli.Texts(&c.folders, "folder", "FOLDER", "where else a file that the design uses may lie"),
			cli.Number(&c.workers, "workers", "NUMBER", "processors to use at most (default all); the result is the same", 1, 1024),
		}, page...),
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "the schedule is written; it has gaps where the design says too little"},
			{Status: statusNotUnderstood, Means: "the design, or the call itself, could not be understood, or the schedule not be written"},
		},
		Examples: []cli.Example{
			{Line: "loudlint schedule cables hall" + schema.Ending, Does: "show each length of cable with its number"},
			{Line: "loudlint schedule all --output hall.xlsx hall" + schema.Ending, Does: "a workbook with every schedule"},
			{Line: "loudlint schedule all --format csv --output tables hall" + schema.Ending, Does: "a folder with a CSV file for every schedule"},
			{Line: "loudlint schedule test-sheet --output test.xlsx hall" + schema.Ending, Does: "the sheet to fill in on site; loudlint import brings it back"},
		},
		Offer: offerKinds,
		Run:   func(arguments []string) int { return c.run(arguments, p) },
	}
}

func kindsInWords() string {
	var all []string
	for _, k := range schedule.Kinds() {
		all = append(all, fmt.Sprintf("%s (%s)", k.Kind, k.Says))
	}
	return strings.Join(all, "; ")
}

// offerKinds lists the kinds for a shell that completes them.
func offerKinds() []cli.Choice {
	var choices []cli.Choice
	for _, k := range schedule.Kinds() {
		choices = append(choices, cli.Choice{Word: string(k.Kind), Says: k.Says})
	}
	return append(choices, cli.Choice{Word: allKinds, Says: "every schedule"})
}

// percentFlag declares a flag that takes a share such as "10 %".
func percentFlag(to *quantity.Percent, name, doc string) *cli.Flag {
	return amountFlag(to, name, "PERCENT", doc, 1000, quantity.ParsePercent, func(p quantity.Percent) string { return p.String() })
}

// lengthFlag declares a flag that takes a length such as "100 m".
func lengthFlag(to *quantity.Length, name, doc string) *cli.Flag {
	return amountFlag(to, name, "LENGTH", doc, 100000, quantity.ParseLength, func(l quantity.Length) string { return l.String() })
}

// amountFlag declares a flag that takes a quantity from 0 to a bound.
func amountFlag[Q ~float64](to *Q, name, value, doc string, most Q, parse func(string) (Q, error), written func(Q) string) *cli.Flag {
	return &cli.Flag{Name: name, Value: value, Doc: doc, Offer: func() []cli.Choice { return nil }, Set: func(text string) error {
		q, err := parse(text)
		switch {
		case err != nil:
			return &cli.CallError{Found: fmt.Sprintf("--%s cannot be %q: %v.", name, text, err)}
		case !(q >= 0 && q <= most):
			return &cli.CallError{Found: fmt.Sprintf("--%s cannot be %q.", name, text), Hint: fmt.Sprintf("It lies between 0 and %s.", written(most))}
		}
		*to = q
		return nil
	}}
}

func (c *scheduling) run(arguments []string, p *Process) int {
	kinds, rest, err := kindsOf(arguments)
	if err == nil {
		err = c.settle(kinds)
	}
	var path string
	if err == nil {
		path, err = oneDesign(rest)
	}
	files := c.files(kinds)
	for _, file := range files {
		if err == nil {
			err = refuseOver(file, []string{path}, c.replace)
		}
	}
	if err != nil {
		return p.misunderstood(err, "help schedule")
	}
	design, problems, err := schema.Load(path, schema.Options{Folders: c.folders, Workers: c.workers})
	if err == nil && len(problems) == 0 {
		problems = c.tolerance(design)
	}
	if err != nil {
		return p.failed(err)
	}
	if len(problems) > 0 {
		_ = textout.Problems(p.Err, problems, textout.Options{}) // only the message may be lost
		return statusNotUnderstood
	}
	for _, f := range design.Files {
		if at := slices.IndexFunc(files, func(file string) bool { return sameFile(f.Name, file) }); at >= 0 {
			return p.failed(fmt.Errorf("write the schedule: %s was read as a part of %s", files[at], path))
		}
	}
	if c.format == formXLSX { // the only form in which it stands
		c.options.Tool = toolName()
	}
	system := analysis.Analyse(design, c.workers)
	tables := make([]*schedule.Table, len(kinds))
	for i, k := range kinds {
		tables[i] = schedule.Make(system, k, c.options)
	}
	if c.output == "" {
		return p.say(p.Out, func(w io.Writer) error { return c.write(w, tables, p) })
	}
	if err := c.save(files, tables, p); err != nil && !closedPipe(err) {
		return p.failed(err)
	}
	return statusPassed
}

// files are those that will be written: one, or one for each table.
func (c *scheduling) files(kinds []schedule.Kind) []string {
	switch {
	case c.output == "":
		return nil
	case !c.inFolder(kinds):
		return []string{c.output}
	}
	files := make([]string, len(kinds))
	for i, k := range kinds {
		files[i] = filepath.Join(c.output, string(k)+"."+formCSV)
	}
	return files
}

// inFolder tells that --output names a folder.
func (c *scheduling) inFolder(kinds []schedule.Kind) bool {
	return c.format == formCSV && len(kinds) > 1
}

// save writes one file, or one for each table.
func (c *scheduling) save(files []string, tables []*schedule.Table, p *Process) error {
	if len(files) == 1 {
		return wholefile.Write(files[0], func(w io.Writer) error { return c.write(w, tables, p) })
	}
	if err := os.Mkdir(c.output, 0o777); err != nil && !errors.Is(err, fs.ErrExist) {
		return fmt.Errorf("make the folder %s: %w", c.output, wholefile.Plain(err))
	}
	for i, file := range files {
		if err := wholefile.Write(file, func(w io.Writer) error { return c.write(w, tables[i:i+1], p) }); err != nil {
			return err
		}
	}
	return nil
}

func (c *scheduling) write(w io.Writer, tables []*schedule.Table, p *Process) error {
	switch c.format {
	case formCSV:
		return sheet.WriteCSV(w, tables[0])
	case formXLSX:
		return sheet.WriteXLSX(w, tables)
	}
	o := c.page.options(p, c.output)
	if c.output == "" && c.page.width == 0 {
		o.Width = p.Columns // tables use what there is
	}
	return textout.WriteTables(w, tables, o)
}

// tolerance takes the band of a test sheet from the limits in force.
func (c *scheduling) tolerance(design *schema.Design) []schema.Problem {
	limits, problems := linter.LimitsInForce(design, linter.Options{Checks: rules.All()})
	readingBand(&c.options, limits)
	return problems
}

// readingBand lets a test sheet ask for what the check of readings will accept.
func readingBand(to *schedule.Options, limits []linter.InForce) {
	for _, l := range limits {
		if l.Check == rules.ReadingAgrees {
			to.Below, to.Above = quantity.Percent(l.Limits.Get("lowest").Value), quantity.Percent(l.Limits.Get("highest").Value)
		}
	}
}

// settle finds the form, and refuses what a form cannot hold.
func (c *scheduling) settle(kinds []schedule.Kind) error {
	if c.format == "" {
		c.format = formText
		switch ending := strings.ToLower(filepath.Ext(c.output)); ending {
		case "." + formCSV:
			c.format = formCSV
		case "." + formXLSX:
			c.format = formXLSX
		}
	}
	switch {
	case c.inFolder(kinds) && (c.output == "" || strings.EqualFold(filepath.Ext(c.output), "."+formCSV)):
		return &cli.CallError{Found: fmt.Sprintf("A CSV file holds one table, and %d are asked for.", len(kinds)), Hint: "Name a folder for them, as in --format csv --output tables, or one spreadsheet, as in --output tables.xlsx."}
	case c.format == formXLSX && c.output == "":
		return &cli.CallError{Found: "A spreadsheet is nothing to show.", Hint: "Name a file, as in --output schedule.xlsx."}
	}
	return nil
}

// kindsOf reads the kinds, each once, and gives the arguments after them.
func kindsOf(arguments []string) ([]schedule.Kind, []string, error) {
	var known []string
	for _, k := range schedule.Kinds() {
		known = append(known, string(k.Kind))
	}
	if len(arguments) == 0 {
		return nil, nil, &cli.CallError{Found: "No kind of schedule is named.", Hint: "It is one of " + strings.Join(append(known, allKinds), ", ") + "."}
	}
	var kinds []schedule.Kind
	add := func(k schedule.Kind) {
		if !slices.Contains(kinds, k) {
			kinds = append(kinds, k)
		}
	}
	for word := range strings.SplitSeq(arguments[0], ",") {
		word = strings.TrimSpace(word)
		switch {
		case word == allKinds:
			for _, k := range known {
				add(schedule.Kind(k))
			}
		case slices.Contains(known, word):
			add(schedule.Kind(word))
		default:
			return nil, nil, cli.Unknown(fmt.Sprintf("There is no schedule %q.", word), word, append(known, allKinds))
		}
	}
	return kinds, arguments[1:], nil
}

// oneDesign gives the one design of a call.
func oneDesign(arguments []string) (string, error) {
	paths, err := designsOf(arguments)
	if err != nil {
		return "", err
	}
	if len(paths) > 1 {
		return "", &cli.CallError{Found: fmt.Sprintf("%d designs are named.", len(paths)), Hint: "A schedule is of one."}
	}
	return paths[0], nil
}

// refuseOver refuses to write over a design, and over any other file unless
// that is asked for: it may be filled in by hand.
func refuseOver(output string, designs []string, replace bool) error {
	if err := refuseOutput(output, designs); err != nil {
		return err
	}
	if info, err := os.Stat(output); err == nil && info.Mode().IsRegular() && !replace {
		return &cli.CallError{Found: fmt.Sprintf("--output %s is there already, and somebody may have written into it.", output), Hint: "Give the result another name, or say --replace."}
	}
	return nil
}
