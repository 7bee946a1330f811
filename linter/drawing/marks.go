package drawing

import (
	"cmp"
	"slices"
	"strconv"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/source"
)

// Findings gives the failed outcomes of a design that nobody accepted, gravest
// first and otherwise in the order of the result. A picture marks the n-th of them, from 1, with n.
func Findings(j *linter.Judged) []*check.Outcome {
	var all []*check.Outcome
	for i := range j.Outcomes {
		if j.Outcomes[i].Counts() {
			all = append(all, &j.Outcomes[i])
		}
	}
	slices.SortStableFunc(all, func(a, b *check.Outcome) int { return cmp.Compare(b.Severity, a.Severity) })
	return all
}

// mark shows a finding at a part.
type mark struct {
	severity check.Severity // 0 for "more of them"
	text     string         // its number
}

// at is a part that is drawn: its outermost part, and its header where it is not
// that part itself. Lines that are like one another share headers.
type at struct {
	step   check.Step
	header source.Span
}

// findings are the findings of a design by the part at which they are drawn.
type findings struct {
	all   []*check.Outcome
	parts map[at][]int // places in all
}

// find puts each finding to the part it is about, or else to the outermost part
// it is in, or to the job.
func find(j *linter.Judged, drawn map[at]bool) *findings {
	f := &findings{all: Findings(j), parts: map[at][]int{}}
	for i, o := range f.all {
		var place at
		if len(o.Subject.Path) > 0 {
			place = at{o.Subject.Path[0], o.Subject.Span}
			if !drawn[place] {
				place.header = source.Span{}
			}
			if !drawn[place] {
				place = at{}
			}
		}
		f.parts[place] = append(f.parts[place], i)
	}
	return f
}

// most is how many marks a part shows before the rest is counted.
const most = 4

// marks gives the marks of a part.
func (f *findings) marks(place at) []mark { return f.marksOf(f.parts[place]) }

func (f *findings) marksOf(numbers []int) []mark {
	var all []mark
	for n, i := range numbers {
		if n == most && len(numbers) > most+1 {
			return append(all, mark{text: "+" + strconv.Itoa(len(numbers)-most)})
		}
		all = append(all, mark{f.all[i].Severity, strconv.Itoa(i + 1)})
	}
	return all
}

// Sizes of a mark.
const (
	markSize = 11.0
	markGap  = 3.0
)

// width is how much room a mark takes with what follows it.
func (m mark) width() float64 {
	if m.severity == 0 {
		return small.width(m.text) + markGap
	}
	return max(markSize+2, onMark.width(m.text)+7) + markGap
}

// onMark letters the number on a mark.
var onMark = style{"d-on", 8.5, true}

func marksWidth(all []mark) float64 {
	var sum float64
	for _, m := range all {
		sum += m.width()
	}
	return sum
}

// marks draws marks from a point to the right, beside a text on that base line.
// Their form tells how grave they are: an error has corners, a warning is cut
// like a roof, a note is round.
func (s *sheet) marks(all []mark, x, baseline float64) {
	for _, m := range all {
		if m.severity == 0 {
			s.text(small, leftward, x, baseline, m.text, "")
			x += m.width()
			continue
		}
		wide := m.width() - markGap
		top, bottom := baseline-markSize+1.5, baseline+2
		switch m.severity {
		case check.Error:
			s.rect("d-error", box{x, top, x + wide, bottom})
		case check.Warning:
			s.path("d-warning", "M"+num(x)+" "+num(bottom)+"L"+num(x+2.5)+" "+num(top)+"L"+num(x+wide-2.5)+" "+num(top)+"L"+num(x+wide)+" "+num(bottom)+"Z")
		default:
			s.body.WriteString(`<rect class="d-note" x="` + num(x) + `" y="` + num(top) + `" width="` + num(wide) + `" height="` + num(bottom-top) + `" rx="5.5"/>` + "\n")
		}
		s.text(onMark, middle, x+wide/2, baseline-0.8, m.text, "")
		x += m.width()
	}
}
