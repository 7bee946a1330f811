package quantity

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Conductors is the make-up of a cable: how many conductors of what size.
type Conductors struct {
	Cores int // 0 where not said
	Size  CrossSection

	// Gauge is the American wire gauge, 1/0 as 0, 2/0 as -1, 3/0 as -2, 4/0 as -3.
	// It means something only where IsAWG is set; Size is then its area.
	Gauge int
	IsAWG bool
}

const (
	thickestGauge = -3 // 4/0
	thinnestGauge = 40
	mostCores     = 100

	// In the form gauge/cores only gauges that loudspeaker and control cable is
	// made in are believed: "1/2" is more likely half of something, and "2/0" is
	// the name of a gauge.
	thickestSlashGauge = 4
	thinnestSlashGauge = 30
)

// AWG gives the area of a round solid conductor of an American wire gauge (1/0 is
// 0, 2/0 is -1 and so on), by the definition of ASTM B258: the diameter is
// 0.127 mm · 92^((36−n)/39).
func AWG(gauge int) CrossSection {
	diameterMM := 0.127 * math.Pow(92, float64(36-gauge)/39)
	return CrossSection(math.Pi / 4 * diameterMM * diameterMM)
}

// ParseCrossSection reads the size of one conductor such as "1.5 mm2" or
// "16 AWG". Forms that say a number of cores are refused.
func ParseCrossSection(text string) (CrossSection, error) {
	set, err := crossSection.parseConductors(text)
	if err != nil {
		return 0, err
	}
	if set.Cores > 0 {
		one := Conductors{Size: set.Size, Gauge: set.Gauge, IsAWG: set.IsAWG}
		r := reading{scale: &crossSection, text: text, end: len(text)}
		from, to := trimSpace(text, 0, len(text))
		return 0, r.fail(from, to, "which says a number of cores", "the size of one conductor", `write "`+one.String()+`"`)
	}
	return set.Size, nil
}

// ParseConductors reads cores and size: "2 x 1.5 mm2", "1.5 mm²", "16 AWG",
// "AWG 16", "2 x 16 AWG", "2/0 AWG", and "16/2" for gauge and cores.
func ParseConductors(text string) (Conductors, error) { return conductorSet.parseConductors(text) }

func (s *scale) parseConductors(text string) (Conductors, error) {
	if err := s.admit(text); err != nil {
		return Conductors{}, err
	}
	r := reading{scale: s, text: text, end: len(text)}
	r.start, r.end = trimSpace(text, 0, len(text))

	cores, next, err := r.cores()
	if err != nil {
		return Conductors{}, err
	}
	r.start = next
	if from, to, ok := r.gaugeText(); ok {
		return r.gauge(from, to, cores, true)
	}
	if isSlashForm(text[r.start:r.end]) {
		return r.gauge(r.start, r.end, cores, false)
	}
	size, err := r.value()
	if err != nil {
		return Conductors{}, err
	}
	return Conductors{Cores: cores, Size: CrossSection(size)}, nil
}

// cores reads "2 x", and says where the size starts. It gives 0 where the text
// does not start so.
func (r reading) cores() (count, next int, err error) {
	end := digitsEnd(r.text[:r.end], r.start)
	if end == r.start {
		return 0, r.start, nil
	}
	at := skipSpace(r.text[:r.end], end)
	sign, size := utf8.DecodeRuneInString(r.text[at:r.end])
	if sign != 'x' && sign != 'X' && sign != '×' {
		return 0, r.start, nil
	}
	count, convErr := strconv.Atoi(r.text[r.start:end])
	if convErr != nil || count < 1 || count > mostCores {
		return 0, 0, r.fail(r.start, end, "as the number of cores", "1 to "+strconv.Itoa(mostCores)+" there", "")
	}
	return count, skipSpace(r.text[:r.end], at+size), nil
}

// gaugeText finds the gauge in "16 AWG" and "AWG 16".
func (r reading) gaugeText() (from, to int, ok bool) {
	const mark = len("AWG")
	switch size := r.text[r.start:r.end]; {
	case len(size) < mark:
		return 0, 0, false
	case strings.EqualFold(size[len(size)-mark:], "AWG"):
		from, to = trimSpace(r.text, r.start, r.end-mark)
	case strings.EqualFold(size[:mark], "AWG"):
		from, to = trimSpace(r.text, r.start+mark, r.end)
	default:
		return 0, 0, false
	}
	return from, to, true
}

// isSlashForm tells whether the text is two runs of digits with a slash between.
func isSlashForm(text string) bool {
	over := digitsEnd(text, 0)
	if over == 0 || over+1 >= len(text) || text[over] != '/' {
		return false
	}
	return digitsEnd(text, over+1) == len(text)
}

// gauge reads "16", "00", "2/0" or "16/2" at text[from:to]. Without the letters
// AWG (marked) only gauge/cores is possible, and "2/0" stays undecided.
func (r reading) gauge(from, to, cores int, marked bool) (Conductors, error) {
	written := r.text[from:to]
	over, under, slashed := strings.Cut(written, "/")
	gauge, ok := gaugeNumber(over)
	switch {
	case !ok || slashed && !allDigits(under):
		return Conductors{}, r.badGauge(from, to)
	case !slashed:
		return awgSet(cores, gauge), nil
	case under != "0":
		return r.gaugeAndCores(from, to, cores)
	case gauge < 1 || gauge > 4:
		return Conductors{}, r.badGauge(from, to)
	case !marked:
		return Conductors{}, r.fail(from, to, "which may be gauge "+written+" or "+over+" AWG with the cores missing",
			r.wanted(), `write "`+written+` AWG" or "2 x `+over+` AWG"`)
	}
	return awgSet(cores, 1-gauge), nil
}

// gaugeAndCores reads "16/2" at text[from:to], two runs of digits.
func (r reading) gaugeAndCores(from, to, coresBefore int) (Conductors, error) {
	over, under, _ := strings.Cut(r.text[from:to], "/")
	if coresBefore > 0 {
		return Conductors{}, r.fail(from, to, "after a number of cores", "a size there, the cores only once",
			`write "`+strconv.Itoa(coresBefore)+" x "+over+` AWG"`)
	}
	gauge, ok := gaugeNumber(over)
	if !ok || gauge < thickestSlashGauge || gauge > thinnestSlashGauge {
		return Conductors{}, r.fail(from, to, "which is no usual gauge/cores", r.wanted(),
			`write "`+under+" x "+over+` AWG" if that is meant`)
	}
	cores, err := strconv.Atoi(under)
	if err != nil || cores < 1 || cores > mostCores || under[0] == '0' {
		return Conductors{}, r.fail(to-len(under), to, "as the number of cores", "1 to "+strconv.Itoa(mostCores)+" there", "")
	}
	return awgSet(cores, gauge), nil
}

func awgSet(cores, gauge int) Conductors {
	return Conductors{Cores: cores, Size: AWG(gauge), Gauge: gauge, IsAWG: true}
}

// gaugeNumber reads "16", and "0" to "0000" for 1/0 to 4/0.
func gaugeNumber(text string) (int, bool) {
	if text == "" || len(text) > 4 || !allDigits(text) {
		return 0, false
	}
	if strings.Trim(text, "0") == "" {
		return 1 - len(text), true
	}
	number, err := strconv.Atoi(text)
	return number, err == nil && text[0] != '0' && number <= thinnestGauge
}

func (r reading) badGauge(from, to int) error {
	if from == to {
		return r.fail(r.start, r.end, "without a gauge", r.wanted(), `write the gauge too: "16 AWG"`)
	}
	return r.fail(from, to, "as a gauge", "a whole number up to "+strconv.Itoa(thinnestGauge)+", or 1/0 to 4/0", "")
}

// String prints the set with its size as it was written: "2 x 1.5 mm2", "16 AWG",
// "2 x 2/0 AWG".
func (c Conductors) String() string { return c.withSize(c.Size.String()) }

// Exact prints the set so that ParseConductors gives the same value.
func (c Conductors) Exact() string { return c.withSize(c.Size.Exact()) }

func (c Conductors) withSize(size string) string {
	switch {
	case c.IsAWG && c.Gauge <= 0:
		size = strconv.Itoa(1-c.Gauge) + "/0 AWG"
	case c.IsAWG:
		size = strconv.Itoa(c.Gauge) + " AWG"
	}
	if c.Cores == 0 {
		return size
	}
	return strconv.Itoa(c.Cores) + " x " + size
}
