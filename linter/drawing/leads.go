package drawing

import (
	"math"
	"slices"

	"loudlint/linter/analysis"
)

// leads are the wires between sources and units. All that goes to one input is
// one net: it runs up and down on one track of its own.
type leads struct {
	nets []*net
}

// net is what is wired to one input.
type net struct {
	into   *analysis.Input
	port   float64 // height of the input
	starts []start // what comes to it
	x      float64 // of its track
	low    float64 // span of the track
	high   float64
}

// start is where a lead begins.
type start struct {
	y    float64
	link bool // from an output of a unit, on the right; else from a source, on the left
}

func (l *leads) net(into *analysis.Input, port float64) *net {
	at := slices.IndexFunc(l.nets, func(n *net) bool { return n.into == into })
	if at < 0 {
		at = len(l.nets)
		l.nets = append(l.nets, &net{into: into, port: port})
	}
	return l.nets[at]
}

// add notes the n-th lead of a source.
func (l *leads) add(into *analysis.Input, port, y float64, n int) {
	// The leads of one source leave it side by side.
	const apart = 4.0
	offset := apart * float64((n+1)/2)
	if n%2 == 1 {
		offset = -offset
	}
	l.net(into, port).starts = append(l.net(into, port).starts, start{y: y + offset})
}

// trackCount is the number of tracks there may be: one for every input in use.
func (d *diagram) trackCount() int {
	n := 0
	for _, u := range d.judged.System.Units {
		for _, i := range u.Inputs {
			if len(i.Feeds)+len(i.Links) > 0 {
				n++
			}
		}
	}
	return n
}

// route draws all leads between two heights of columns.
func (d *diagram) route(left, right float64) {
	for _, u := range d.judged.System.Units {
		for _, l := range u.Links {
			from, ok := d.exits[l]
			to, known := d.ports[l.Into]
			if ok && known {
				n := d.leads.net(l.Into, to)
				n.starts = append(n.starts, start{y: from, link: true})
			}
		}
	}
	d.leads.separate()
	for _, n := range d.leads.nets {
		n.low, n.high = n.port, n.port
		for _, s := range n.starts {
			n.low, n.high = min(n.low, s.y), max(n.high, s.y)
		}
	}
	d.leads.tracks(left + track)
	s := &d.sheet
	for _, n := range d.leads.nets {
		for _, from := range n.starts {
			if from.link {
				s.wire("d-lead", right, from.y, n.x, from.y)
			} else {
				s.wire("d-lead", left, from.y, n.x, from.y)
			}
			if from.y > n.low && from.y < n.high {
				s.circle("d-solid", n.x, from.y, 2)
			}
		}
		if n.high > n.low {
			s.wire("d-lead", n.x, n.low, n.x, n.high)
		}
		if n.port > n.low && n.port < n.high {
			s.circle("d-solid", n.x, n.port, 2)
		}
		s.wire("d-lead", n.x, n.port, right, n.port)
		s.path("d-solid", "M"+num(right)+" "+num(n.port)+"l-6 -3v6z")
	}
}

// separate moves the beginnings of leads so that leads of two nets never lie on
// one another.
func (l *leads) separate() {
	taken := map[int]*net{}
	for _, n := range l.nets {
		taken[int(math.Round(n.port))] = n
	}
	for _, n := range l.nets {
		for _, s := range n.starts {
			if s.link {
				taken[int(math.Round(s.y))] = n
			}
		}
	}
	for _, n := range l.nets {
		for i := range n.starts {
			s := &n.starts[i]
			if s.link {
				continue
			}
			for _, off := range []float64{0, 2, -2, 4, -4, 6, -6, 8, -8} {
				at := int(math.Round(s.y + off))
				if other := taken[at]; other == nil || other == n {
					taken[at] = n
					s.y += off
					break
				}
			}
		}
	}
}

// tracks gives each net the leftmost track on which nothing else runs at its
// height.
func (l *leads) tracks(first float64) {
	order := slices.Clone(l.nets)
	slices.SortStableFunc(order, func(a, b *net) int {
		switch {
		case a.low < b.low:
			return -1
		case a.low > b.low:
			return 1
		}
		return 0
	})
	var used [][]*net
	for _, n := range order {
		at := slices.IndexFunc(used, func(all []*net) bool {
			return !slices.ContainsFunc(all, func(o *net) bool { return n.low < o.high+4 && o.low < n.high+4 })
		})
		if at < 0 {
			at = len(used)
			used = append(used, nil)
		}
		used[at] = append(used[at], n)
		n.x = first + track*float64(at)
	}
}
