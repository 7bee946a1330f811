package drawing

import "loudlint/schema"

// Symbols after IEC 60617, drawn from memory. Each is drawn around or below a
// point and keeps its place.

// Sizes of symbols.
const (
	speakerWide = 20.0
	speakerHigh = 15.0
	control     = 16.0 // side of an attenuator
	sourceSize  = 18.0 // side of a source
)

// speaker draws a loudspeaker, its terminals up at a point.
func (s *sheet) speaker(x, y float64) {
	s.path("d-body", "M"+num(x-4)+" "+num(y)+"h8v5l6 10h-20l6 -10z")
	s.path("d-ink", "M"+num(x-4)+" "+num(y+5)+"h8")
	s.takes(box{x - speakerWide/2, y, x + speakerWide/2, y + speakerHigh})
}

// speakerAside draws a loudspeaker, its terminals to the left at a point.
func (s *sheet) speakerAside(x, y float64) {
	s.path("d-body", "M"+num(x)+" "+num(y-4)+"v8h5l10 6v-20l-10 6z")
	s.path("d-ink", "M"+num(x+5)+" "+num(y-4)+"v8")
	s.takes(box{x, y - speakerWide/2, x + speakerHigh, y + speakerWide/2})
}

// attenuator draws an adjustable attenuator in a line that goes down, its middle
// at a point.
func (s *sheet) attenuator(x, y float64) {
	const half = control / 2
	s.rect("d-body", box{x - half, y - half, x + half, y + half})
	s.path("d-ink", "M"+num(x-half-3)+" "+num(y+half+2)+"L"+num(x+half+2)+" "+num(y-half-1)+"m-4.5 -.5l4.5 .5l-1 4.5")
	s.takes(box{x - half - 3, y - half, x + half + 3, y + half + 2})
}

// existing draws equipment that is not spelled out.
func (s *sheet) existing(x, y float64) {
	s.rect("d-dash", box{x - speakerWide/2, y, x + speakerWide/2, y + speakerHigh})
	s.takes(box{x - speakerWide/2, y, x + speakerWide/2, y + speakerHigh})
}

// resistor draws what ends a watched line.
func (s *sheet) resistor(x, y float64) {
	s.rect("d-body", box{x - 4, y, x + 4, y + speakerHigh})
	s.takes(box{x - 4, y, x + 4, y + speakerHigh})
}

// tee draws a joint of wires.
func (s *sheet) tee(x, y float64) { s.circle("d-solid", x, y, 2.6) }

// amplifier draws the triangle of an amplifier inside a box, its point to the
// right.
func (s *sheet) amplifier(x, y float64) {
	s.path("d-body", "M"+num(x)+" "+num(y)+"v14l13 -7z")
	s.takes(box{x, y, x + 13, y + 14})
}

// mixer draws the sign of a mixer.
func (s *sheet) mixer(x, y float64) {
	s.path("d-ink", "M"+num(x+11)+" "+num(y+3)+"v-2h-10l6 6l-6 6h10v-2")
	s.takes(box{x, y, x + 13, y + 14})
}

// source draws a source of a kind, its middle at a point.
func (s *sheet) source(kind string, x, y float64) {
	const r = sourceSize/2 - 1
	switch kind {
	case schema.KindMicrophone: // a circle with a tangent
		s.circle("d-body", x, y, r)
		s.path("d-ink", "M"+num(x-r)+" "+num(y-r)+"v"+num(2*r))
	case schema.KindMusic: // a disc
		s.circle("d-body", x, y, r)
		s.circle("d-solid", x, y, 2)
	case schema.KindTelephone: // a set with its handset
		s.path("d-body", "M"+num(x-r)+" "+num(y+r)+"l3 -8h10l3 8z")
		s.path("d-ink", "M"+num(x-r)+" "+num(y-2)+"v-4h16v4")
	default: // a store
		s.rect("d-body", box{x - r, y - r, x + r, y + r})
		s.path("d-ink", "M"+num(x-r)+" "+num(y-2)+"h16M"+num(x-r)+" "+num(y+3)+"h16")
	}
	s.takes(box{x - r, y - r, x + r, y + r})
}
