package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/cmd/loudlint/internal/wholefile"
	"loudlint/linter/sheet"
	"loudlint/linter/textout"
	"loudlint/linter/transfer"
	"loudlint/schema"
)

// importing holds the flags of import.
type importing struct {
	output  string
	replace bool
	design  string
	folders []string
}

func importCommand(p *Process) *cli.Command {
	c := &importing{}
	return &cli.Command{
		Name:      "import",
		Arguments: "TABLE",
		Summary:   "turn a table into text of a design",
		About: []string{
			"Reads a table of loudspeakers, or a filled-in test sheet, from CSV or a spreadsheet (XLSX), and writes it as blocks of a design: lines with their devices, or readings. This is done once; from then on the text is what counts.",
			"A table of loudspeakers has a row for each device in walking order. Its heads are those of loudlint schedule loudspeakers or what people call the same, with the unit: Line, Designation, Tap (W), Leg (m), Model, Space, Cable and so on. Equal neighbours become a run.",
			"What is not understood is said with sheet, row and column, and stays in the text as a comment. A head that is nearly a known one is refused: a column that is passed over would change the design. Formulas are not worked out; their stored results are taken, and it is said.",
			fmt.Sprintf("At most %d bytes are read, and %d rows of %d columns.", sheet.MaxFileBytes, sheet.MaxRows, sheet.MaxColumns),
		},
		Flags: []*cli.Flag{
			cli.Text(&c.design, "design", "DESIGN", "the design the text is for: what it has is not written again, and lines it has not are told"),
			outputFlag(&c.output, "the text", ""),
			cli.Switch(&c.replace, "replace", "let --output replace a file that is there"),
			cli.Texts(&c.folders, "folder", "FOLDER", "where else a file that the design uses may lie"),
		},
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "everything was understood"},
			{Status: statusFindings, Means: "the text is written, and something in the table was not understood: it is kept in comments"},
			{Status: statusNotUnderstood, Means: "the table, the design or the call could not be understood, or the text not be written"},
		},
		Examples: []cli.Example{
			{Line: "loudlint import loudspeakers.xlsx --output lines" + schema.Ending, Does: "lines of a new design"},
			{Line: "loudlint import test.xlsx --design hall --output hall/readings" + schema.Ending, Does: "readings into a design that is a folder; loudlint check then judges them"},
		},
		Run: func(arguments []string) int { return c.run(arguments, p) },
	}
}

func (c *importing) run(arguments []string, p *Process) int {
	var err error
	switch {
	case len(arguments) != 1:
		err = &cli.CallError{Found: fmt.Sprintf("%d tables are named.", len(arguments)), Hint: "It is one file: CSV or XLSX."}
	case c.output != "":
		err = c.refuseOutput(arguments[0])
	}
	if err != nil {
		return p.misunderstood(err, "help import")
	}
	options, status := c.beside(p)
	if status != statusPassed {
		return status
	}
	table := arguments[0]
	data, err := readBounded(table)
	if err != nil {
		return p.failed(fmt.Errorf("read the table %s: %w", table, wholefile.Plain(err)))
	}
	book, err := sheet.Read(data)
	if err != nil {
		return p.failed(fmt.Errorf("read the table %s: %w", table, err))
	}
	result, err := transfer.Convert(book, options)
	if err != nil {
		return p.failed(fmt.Errorf("read the table %s: %w", table, err))
	}
	write := func(w io.Writer) error {
		_, err := io.WriteString(w, result.Text)
		return err
	}
	if c.output == "" {
		status = p.say(p.Out, write)
	} else if err := wholefile.Write(c.output, write); err != nil && !closedPipe(err) {
		return p.failed(err)
	}
	for i := range result.Notices { // only the message may be lost
		_, _ = fmt.Fprintf(p.Err, "%s: %s\n", textout.Printable(table), textout.Printable(result.Notices[i].String()))
	}
	if status == statusPassed && len(result.Notices) > 0 {
		return statusFindings
	}
	return status
}

// beside reads the design the text is for.
func (c *importing) beside(p *Process) (transfer.Options, int) {
	if c.design == "" {
		return transfer.Options{}, statusPassed
	}
	design, problems, err := schema.Load(filepath.Clean(c.design), schema.Options{Folders: c.folders})
	if err != nil {
		return transfer.Options{}, p.failed(err)
	}
	if len(problems) > 0 {
		_ = textout.Problems(p.Err, problems, textout.Options{}) // only the message may be lost
		return transfer.Options{}, statusNotUnderstood
	}
	return transfer.Options{Design: design}, statusPassed
}

// refuseOutput refuses to write over the table, and over any file unless that is
// asked for.
func (c *importing) refuseOutput(table string) error {
	info, err := os.Stat(c.output)
	switch {
	case sameFile(table, c.output):
		return &cli.CallError{Found: fmt.Sprintf("--output %s would write over the table.", c.output), Hint: "Give the text a name of its own."}
	case err == nil && info.Mode().IsRegular() && !c.replace:
		hint := "Give the text another name, or say --replace."
		if strings.HasSuffix(c.output, schema.Ending) {
			hint = "Give the text another name; a design that is a folder reads all its files. --replace would take what is there away."
		}
		return &cli.CallError{Found: fmt.Sprintf("--output %s is there already.", c.output), Hint: hint}
	}
	return nil
}
