package drawing

import (
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	plotfont "gonum.org/v1/plot/font"
	"gonum.org/v1/plot/font/liberation"
)

// style is a kind of lettering.
type style struct {
	class string
	px    float64
	bold  bool
}

// The kinds of lettering in a picture.
var (
	heading = style{"d-h", 15, true}
	strong  = style{"d-b", 11, true}
	plain   = style{"d-t", 11, false}
	small   = style{"d-s", 9.5, false}
	onLine  = style{"d-height", 9.5, true}
)

// Lettering is measured with Liberation Sans, whose widths are those of the
// faces a reader most likely sees; reserve is for those that are wider.
const (
	reserve = 1.04
	// ascent and descent of a line of text, as shares of its size.
	ascent, descent = 0.80, 0.22
	// strange is the width taken for a character the face has not, as a share of
	// the size: characters of East Asian scripts are as wide as high.
	strange = 1.15
)

// face holds the widths of the characters of one weight, in shares of the size.
type face struct {
	ascii [128]float64
	font  *sfnt.Font
}

// faces gives the regular and the bold face.
var faces = sync.OnceValue(func() [2]*face {
	cache := plotfont.NewCache(liberation.Collection())
	all := [2]*face{}
	for i, weight := range []font.Weight{font.WeightNormal, font.WeightBold} {
		f := &face{font: cache.Lookup(plotfont.Font{Typeface: "Liberation", Variant: "Sans", Weight: weight}, 1).Face}
		for r := ' '; r < 127; r++ {
			f.ascii[r] = f.look(r)
		}
		all[i] = f
	}
	return all
})

// look reads the width of a character off the face.
func (f *face) look(r rune) float64 {
	var buffer sfnt.Buffer
	em := fixed.Int26_6(f.font.UnitsPerEm())
	glyph, err := f.font.GlyphIndex(&buffer, r)
	if err != nil || glyph == 0 {
		return strange
	}
	advance, err := f.font.GlyphAdvance(&buffer, glyph, em, font.HintingNone)
	if err != nil {
		return strange
	}
	return float64(advance) / float64(em)
}

// width measures a text in pixels.
func (s style) width(text string) float64 {
	f := faces()[0]
	if s.bold {
		f = faces()[1]
	}
	var sum float64
	for _, r := range text {
		if r < 127 {
			sum += f.ascii[r]
		} else {
			sum += f.look(r)
		}
	}
	return sum * s.px * reserve
}

// cut shortens a text to so many pixels and marks the cut.
func (s style) cut(text string, px float64) string {
	if s.width(text) <= px {
		return text
	}
	const mark = "…"
	left := px - s.width(mark)
	end := 0
	for i, r := range text {
		left -= s.width(string(r))
		if left < 0 {
			break
		}
		end = i + len(string(r))
	}
	return text[:end] + mark
}
