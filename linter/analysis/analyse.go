package analysis

import (
	"sync"

	"loudlint/schema"
	"loudlint/schema/parallel"
)

// Analyse works out a design, on at most `workers` goroutines (0: as many as
// there are processors). The result is the same for any number.
func Analyse(design *schema.Design, workers int) *System {
	s := &System{Design: design, TemperatureC: float64(design.System.ConductorTemperature.Or(20)), workers: workers}
	s.sounds = sync.OnceValue(s.gatherSound)
	lines := s.connect()
	parallel.Do(len(lines), workers, func(i int) { s.solveLine(lines[i]) })
	for _, o := range s.Outputs {
		o.addLines()
	}
	for _, c := range s.Channels {
		c.addLoads()
	}
	s.analyseSignal()
	s.analyseSupply()
	s.analyseExposure()
	return s
}

// connect makes the parts of the system and joins them as the design says.
func (s *System) connect() []*Line {
	outputs := map[*schema.Output]*Output{}
	channels := map[*schema.Channel]*Channel{}
	amplifiers := map[*schema.Unit]*Amplifier{}
	for _, u := range s.Design.Units {
		if u.Kind != schema.KindAmplifier {
			continue
		}
		a := &Amplifier{Part: u}
		amplifiers[u] = a
		s.Amplifiers = append(s.Amplifiers, a)
		for _, part := range u.Channels {
			c := &Channel{Amplifier: a, Part: part}
			c.Rated = ratedPower(a, part)
			channels[part] = c
			a.Channels = append(a.Channels, c)
			s.Channels = append(s.Channels, c)
		}
		for _, part := range u.Outputs {
			if part.Channel.V == "" && !part.Implied {
				continue // an output for the next unit
			}
			o := &Output{Amplifier: a, Part: part, Channel: channels[u.Channel(part.Channel.V)]}
			outputs[part] = o
		}
	}
	for _, part := range s.Design.Lines {
		l := &Line{Part: part, Amplifier: amplifiers[part.AmplifierPart], Output: outputs[part.OutputPart], Channel: channels[part.ChannelPart]}
		if l.Output == nil && part.OutputPart != nil { // a line drawn without its amplifier
			l.Output = &Output{Part: part.OutputPart}
			l.Output.classify()
		}
		if l.Output != nil {
			l.Output.Lines = append(l.Output.Lines, l)
		}
		if l.Amplifier != nil {
			l.Amplifier.Lines = append(l.Amplifier.Lines, l)
		}
		s.Lines = append(s.Lines, l)
	}
	for _, a := range s.Amplifiers {
		for _, part := range a.Part.Outputs {
			o := outputs[part]
			if o == nil || part.Implied && len(o.Lines) == 0 {
				continue // goes to another unit
			}
			o.classify()
			a.Outputs = append(a.Outputs, o)
			s.Outputs = append(s.Outputs, o)
			if o.Channel != nil {
				o.Channel.Outputs = append(o.Channel.Outputs, o)
			}
		}
	}
	return s.Lines
}
