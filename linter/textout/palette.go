package textout

import "github.com/fatih/color"

// Style is what a piece of text is, as far as its colour goes.
type Style int

// Styles.
const (
	Plain Style = iota
	Head        // name of a design or of a part of the system
	Place       // file and line
	Label       // what a row tells, and everything else that may stand back
	Error
	Warning
	Note
	Open
	Pass
	styles // how many there are
)

// Palette colours text. The zero Palette leaves it as it is.
type Palette struct {
	colours [styles]*color.Color
}

// NewPalette makes a palette that colours, or one that does not. Whether to
// colour is for the caller to decide.
func NewPalette(colour bool) Palette {
	var p Palette
	if !colour {
		return p
	}
	for style, attributes := range map[Style][]color.Attribute{
		Head:    {color.Bold},
		Place:   {color.FgCyan},
		Label:   {color.Faint},
		Error:   {color.Bold, color.FgRed},
		Warning: {color.Bold, color.FgYellow},
		Note:    {color.Bold},
		Open:    {color.Bold, color.FgCyan},
		Pass:    {color.FgGreen},
	} {
		c := color.New(attributes...)
		c.EnableColor() // whatever the library made of the environment
		p.colours[style] = c
	}
	return p
}

// Paint gives text in a style. The text must be safe to print: see [Printable].
func (p Palette) Paint(style Style, text string) string {
	if c := p.colours[style]; c != nil && text != "" {
		return c.Sprint(text)
	}
	return text
}
