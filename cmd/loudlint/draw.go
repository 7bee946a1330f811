package main

import (
	"fmt"
	"io"
	"slices"

	"loudlint/cmd/loudlint/internal/cli"
	"loudlint/linter"
	"loudlint/linter/drawing"
	"loudlint/schema"
)

// picture is one of the pictures that can be drawn.
type picture struct {
	word, shows string
	draw        func(*linter.Judged) *drawing.Picture
}

func pictures() []picture {
	return []picture{
		{"system", "single-line diagram of the whole system", drawing.System},
		{"overview", "the same with each line as a stub", drawing.Overview},
		{"loads", "load of each power channel against its rating and limit", drawing.Loads},
		{"levels", "decibels lost along each line", drawing.Levels},
		{"impedance", "impedance of each output over frequency", drawing.Impedance},
		{"sound", "level and speech intelligibility over the floor of each space", drawing.Sound},
	}
}

// drawCommand makes the command that draws.
func drawCommand(p *Process) *cli.Command {
	var o onePage
	return &cli.Command{
		Name:      "draw",
		Arguments: "PICTURE [DESIGN]",
		Summary:   "draw a picture of a design",
		About: append([]string{
			"Draws a picture of a design as SVG, with the findings marked at their parts. Symbols are after IEC 60617, from memory. The pictures are:",
		}, pictureWords()...),
		Flags: o.declareAll(p),
		Statuses: []cli.Status{
			{Status: statusPassed, Means: "the picture was drawn, whatever was found"},
			{Status: statusNotUnderstood, Means: "the design, or the call itself, could not be understood, or the picture not be written"},
		},
		Examples: []cli.Example{
			{Line: "loudlint draw system --output hall.svg hall" + schema.Ending, Does: "draw the single-line diagram"},
			{Line: "loudlint draw levels --output levels.svg hall" + schema.Ending, Does: "draw what is lost along the lines"},
		},
		Offer: offerPictures,
		Run: func(arguments []string) int {
			drawn, rest, err := pictureNamed(arguments)
			if err != nil {
				return p.misunderstood(err, "help draw")
			}
			return o.run(rest, p, "draw", func(w io.Writer, j *linter.Judged) error { return drawn.draw(j).Write(w) })
		},
	}
}

func pictureWords() []string {
	var all []string
	for _, one := range pictures() {
		all = append(all, fmt.Sprintf("%s: %s.", one.word, one.shows))
	}
	return all
}

func offerPictures() []cli.Choice {
	var all []cli.Choice
	for _, one := range pictures() {
		all = append(all, cli.Choice{Word: one.word, Says: one.shows})
	}
	return all
}

// pictureNamed reads which picture is to be drawn, and gives what follows.
func pictureNamed(arguments []string) (picture, []string, error) {
	all := pictures()
	words := make([]string, len(all))
	for i, one := range all {
		words[i] = one.word
	}
	if len(arguments) == 0 {
		return picture{}, nil, &cli.CallError{Found: "No picture is named.", Hint: "For example loudlint draw system hall" + schema.Ending + "."}
	}
	at := slices.Index(words, arguments[0])
	if at < 0 {
		return picture{}, nil, cli.Unknown(fmt.Sprintf("There is no picture %q.", arguments[0]), arguments[0], words)
	}
	return all[at], arguments[1:], nil
}
