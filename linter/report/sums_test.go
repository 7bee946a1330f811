package report

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// unitFactors give the size of a unit as a calculator's user takes it: a length
// stays in what it is written in, so that metres beside ohms per foot come out
// wrong.
var unitFactors = map[string]float64{
	"": 1, "W": 1, "mW": 1e-3, "kW": 1e3, "V": 1, "mV": 1e-3, "A": 1, "mA": 1e-3, "Ah": 1, "ohm": 1, "kohm": 1e3, "Mohm": 1e6,
	"m": 1, "ft": 1, "ohm/km": 1e-3, "ohm/1000 ft": 1e-3, "dB": 1, "%": 1e-2, "h": 1, "min": 1. / 60,
}

var (
	// comments in a sum say where a figure is from.
	comments = regexp.MustCompile(` \([^()]*[a-z]{2}[^()]*\)| \([^()]* at [^()]*\)`)
	figures  = regexp.MustCompile(`^(\d+(?:\.\d+)?)(?: (\d)/(\d+))?(?: ?(ohm/1000 ft|ohm/km|[A-Za-z]+|%))?`)
)

// calculator works out sums as they are printed. It goes from left to right like
// a pocket calculator with brackets.
type calculator struct {
	text string
	err  error
}

func (c *calculator) take(word string) bool {
	if rest, ok := strings.CutPrefix(strings.TrimLeft(c.text, " "), word); ok {
		c.text = rest
		return true
	}
	return false
}

func (c *calculator) sum() float64 {
	v := c.product()
	for c.err == nil {
		switch {
		case c.take("+"):
			v += c.product()
		case c.take("−"), c.take("- "):
			v -= c.product()
		default:
			return v
		}
	}
	return v
}

func (c *calculator) product() float64 {
	v := c.factor()
	for c.err == nil {
		switch {
		case c.take("×"):
			v *= c.factor()
		case c.take("/"):
			v /= c.factor()
		default:
			return v
		}
	}
	return v
}

func (c *calculator) factor() float64 {
	var v float64
	switch {
	case c.err != nil:
		return 0
	case c.take("lg"):
		return math.Log10(c.factor())
	case c.take("√"):
		return math.Sqrt(c.factor())
	case c.take("-"), c.take("−"):
		return -c.factor()
	case c.take("+"):
		return c.factor()
	case c.take("("):
		v = c.sum()
		if !c.take(")") && c.err == nil {
			c.err = fmt.Errorf("no bracket before %q", c.text)
		}
	default:
		c.text = strings.TrimLeft(c.text, " ")
		m := figures.FindStringSubmatch(c.text)
		if m == nil {
			c.err = fmt.Errorf("no figure at %q", c.text)
			return 0
		}
		factor, known := unitFactors[m[4]]
		if !known {
			c.err = fmt.Errorf("no unit: %q", m[4])
		}
		v, _ = strconv.ParseFloat(m[1], 64)
		if m[2] != "" {
			over, _ := strconv.ParseFloat(m[2], 64)
			under, _ := strconv.ParseFloat(m[3], 64)
			v += over / under
		}
		v *= factor
		c.text = c.text[len(m[0]):]
	}
	if c.take("²") {
		v *= v
	}
	return v
}

// worked gives what a side of a sum comes to.
func worked(side string) (float64, error) {
	c := &calculator{text: side}
	v := c.sum()
	if c.err == nil && strings.TrimSpace(c.text) != "" {
		c.err = fmt.Errorf("left over: %q", c.text)
	}
	return v, c.err
}

// sumsOf lists what a report holds as sums.
func sumsOf(p *page) []string {
	var all []string
	add := func(sum string) {
		if sum != "" && !slices.Contains(all, sum) {
			all = append(all, sum)
		}
	}
	for _, f := range append(slices.Clone(p.Findings), p.Accepted...) {
		for _, g := range f.Figures {
			add(g.Sum)
		}
	}
	for _, s := range append(slices.Clone(p.Units), p.Lines...) {
		for _, g := range s.Figures {
			add(g.Sum)
		}
		for _, r := range s.Runs {
			add(r.EachSum)
			add(r.Through)
		}
	}
	return all
}

// TestSumsComeOut works out every sum of the reports from its printed figures.
func TestSumsComeOut(t *testing.T) {
	t.Parallel()
	const (
		near  = 0.0015 // of figures with four digits, two of them squared
		least = 4      // sums in the poorest of these reports
	)
	for _, name := range []string{"ferry_terminal", "hotel", "school", "village_hall", "warehouse_us", "first_steps"} {
		worked := 0
		for _, sum := range sumsOf(pageOf(example(t, name), options)) {
			if strings.Contains(sum, "ft") && regexp.MustCompile(`\d m\b|/km`).MatchString(sum) {
				t.Errorf("%s: feet and metres in one sum: %s", name, sum)
			}
			n, err := comesOut(sum, near)
			if err != nil {
				t.Errorf("%s: %v", name, err)
			}
			worked += n
		}
		if worked < least {
			t.Errorf("%s: only %d sums were worked out", name, worked)
		}
		t.Logf("%s: %d sums", name, worked)
	}
}

// comesOut works out the parts of a text that are sums, and tells how many there
// are.
func comesOut(text string, tolerance float64) (int, error) {
	plain := comments.ReplaceAllString(text, "")
	done := 0
	for _, part := range regexp.MustCompile(`[;:,] `).Split(plain, -1) {
		sides := strings.Split(strings.TrimPrefix(part, "the line takes "), " = ")
		if len(sides) < 2 || !strings.ContainsAny(sides[0], "×/²√+") || strings.Contains(part, "…") {
			continue
		}
		want, err := worked(sides[0])
		if err != nil {
			return done, fmt.Errorf("%q cannot be worked out: %w", text, err)
		}
		for _, side := range sides[1:] {
			got, err := worked(side)
			if err != nil {
				return done, fmt.Errorf("%q cannot be worked out: %w", text, err)
			}
			if math.Abs(got-want) > tolerance*math.Abs(got) && math.Abs(got-want) > lastDigit(side)*0.501 {
				return done, fmt.Errorf("%q comes to %.5g", text, want)
			}
			done++
		}
	}
	return done, nil
}

// lastDigit is what one more in the last digit of a figure is worth.
func lastDigit(side string) float64 {
	m := regexp.MustCompile(`\d+(?:\.(\d+))?`).FindStringSubmatch(side)
	return math.Pow10(-len(m[1]))
}

// TestCalculator shows that a wrong sum is seen.
func TestCalculator(t *testing.T) {
	t.Parallel()
	for _, right := range []string{
		"2 × 1194 ft × 1.651 ohm/1000 ft = 3.943 ohm", "2 × 137 m × 7.98 ohm/km = 2.187 ohm", "30 × 7 1/2 W = 225 W", "10 × lg(3 W / 4 W) = -1.249 dB",
		"20 × lg(1 / (1 − 0.1024)) = 0.9383 dB", "100 V / √2 = 70.71 V", "4 × 10 W + 1 × 10 W (5 W at 70.7 V, on 100 V) = 50 W",
	} {
		if n, err := comesOut(right, 0.001); err != nil || n != 1 {
			t.Errorf("%q: %d sums, %v", right, n, err)
		}
	}
	for _, wrong := range []string{"2 × 273.3 m × 1.651 ohm/1000 ft = 2.96 ohm", "30 × 7 1/2 W = 220 W", "(100 V)² / 240 = 41 ohm", "6 W × what = 12 W", "10 × lg(3 W / 4 W) = -1.3 dB"} {
		if _, err := comesOut(wrong, 0.001); err == nil {
			t.Errorf("%q passes for right", wrong)
		}
	}
}
