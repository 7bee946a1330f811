package quantity

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"loudlint/schema/wording"
)

// longestText bounds the text of one value, in bytes.
const longestText = 200

// unit is one unit of a scale. A written value v stands for
// (v − zero)·mul/div in the base unit; mul and div are whole numbers, so that
// exact factors such as 0.3048 stay exact.
type unit struct {
	name     string // as printed and as taught
	mul, div float64
	zero     float64
	strict   bool     // letter case carries meaning and must be as written here
	next     string   // the smaller unit that may follow: ft and in
	each     float64  // how many of next make one of this
	also     []string // other spellings
}

// slip is a unit that people write by mistake and what to tell them. "#" in the
// advice stands for the number they wrote.
type slip struct{ unit, advice string }

// step says from which magnitude on, in the base unit, a value prints in a unit.
type step struct {
	from float64
	unit string
}

// scale is one dimension: its units and the values it permits. The tables are in
// units.go.
type scale struct {
	name    string
	example string
	units   []unit // the base unit first
	prints  []step // ascending; none: always the base unit
	slips   []slip

	lowest, highest float64 // permitted, in the base unit
	smallest        float64 // the smallest magnitude permitted, 0 aside
	noZero          bool    // 0 is refused
	gauges          bool    // American wire gauges are accepted too
}

// reading is a part of a text that is read on a scale. The whole text is kept so
// that offsets and hints speak of it.
type reading struct {
	*scale
	text       string
	start, end int
}

// parse reads the whole text on the scale and gives the value in the base unit.
func (s *scale) parse(text string) (float64, error) {
	if err := s.admit(text); err != nil {
		return 0, err
	}
	return reading{scale: s, text: text, end: len(text)}.value()
}

// admit refuses texts that are not one short line of printable characters.
func (s *scale) admit(text string) error {
	if text == "" {
		return &Error{Found: "an empty text", Expected: s.wanted()}
	}
	if len(text) > longestText {
		return &Error{
			Found:    "a text of " + strconv.Itoa(len(text)) + " bytes",
			Expected: s.wanted() + ", in at most " + strconv.Itoa(longestText) + " bytes",
			Length:   len(text),
		}
	}
	for i := range len(text) {
		if c := text[i]; c < ' ' || c > '~' {
			return s.admitUnicode(text, i)
		}
	}
	return nil
}

// admitUnicode goes on from the first byte that is not printable ASCII.
func (s *scale) admitUnicode(text string, i int) error {
	for i < len(text) {
		r, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == utf8.RuneError && size == 1:
			return &Error{
				Found:    "the byte 0x" + strings.ToUpper(strconv.FormatUint(uint64(text[i]), 16)) + ", which is not UTF-8 text",
				Expected: s.wanted(), Hint: "save the file as UTF-8", Offset: i, Length: 1,
			}
		case unicode.IsControl(r) || unicode.In(r, unicode.Cf, unicode.Zl, unicode.Zp):
			return &Error{
				Found:    "the invisible character " + codePoint(r),
				Expected: s.wanted(), Hint: "delete it", Offset: i, Length: size,
			}
		}
		i += size
	}
	return nil
}

func codePoint(r rune) string {
	digits := strings.ToUpper(strconv.FormatInt(int64(r), 16))
	return "U+" + strings.Repeat("0", max(0, 4-len(digits))) + digits
}

// value reads number and unit and checks the range.
func (r reading) value() (float64, error) {
	n, u, err := r.written()
	if err != nil {
		return 0, err
	}
	value := n.in(u)
	if !r.permits(value) {
		return 0, r.outOfRange(value)
	}
	return value, nil
}

// in applies a unit. One multiplication on each side of one division keeps the
// result correctly rounded for every number a person would write. "-0" is 0.
func (n number) in(u *unit) float64 {
	value := (n.num - u.zero*n.den) * u.mul / (n.den * u.div)
	if value == 0 {
		return 0
	}
	return value
}

// written reads number and unit without judging the value.
func (r reading) written() (number, *unit, error) {
	r.start, r.end = trimSpace(r.text, r.start, r.end)
	body := r.text[:r.end]
	n, from, to, bad := scanNumber(body, r.start)
	if bad != noFault {
		return n, nil, r.badNumber(from, to, bad)
	}
	at := skipSpace(body, to)
	if u := r.unit(body[at:]); u != nil {
		return n, u, nil
	}
	if sum, u, err := r.compound(n, from, at); u != nil || err != nil {
		return sum, u, err
	}
	return n, nil, r.badUnit(from, to, at)
}

// compound reads "29 ft 6 in" and "1 h 30 min": the first number is known, its
// unit starts at text[at:]. The sum is in the last unit written. It returns
// neither unit nor error where the text is not of that form.
func (r reading) compound(sum number, from, at int) (number, *unit, error) {
	body := r.text[:r.end]
	var last *unit
	for {
		stop := at
		for stop < len(body) && !startsNumber(body[stop:]) {
			stop++
		}
		_, nameEnd := trimSpace(body, at, stop)
		u := r.unit(body[at:nameEnd])
		switch {
		case u == nil && last == nil:
			return sum, nil, nil
		case u == nil:
			return sum, nil, r.badUnit(from, numberEnd(body, from), at)
		case last != nil && u.name != last.next:
			return sum, nil, r.fail(from, nameEnd, "after "+quote(last.name), "a figure in "+quote(last.next)+" there", "")
		case stop == len(body):
			return sum, u, nil
		case u.next == "":
			if last == nil {
				return sum, nil, nil
			}
			return sum, nil, r.fail(stop, len(body), "after "+quote(u.name), "nothing more", "")
		case sum.den != 1:
			return sum, nil, r.fail(from, nameEnd, "which has a fraction before a smaller unit",
				"a whole number before "+quote(u.name), "")
		}
		n, numFrom, numTo, bad := scanNumber(body, stop)
		if bad != noFault {
			return sum, nil, r.badNumber(numFrom, numTo, bad)
		}
		if n.num >= u.each*n.den {
			return sum, nil, r.fail(numFrom, numTo, "after "+quote(u.name),
				"less than "+strconv.Itoa(int(u.each))+" "+u.next+" there", "")
		}
		if math.Signbit(sum.num) {
			n.num = -n.num
		}
		// The conversion forbids a fused multiply-add: same digits on every machine.
		sum = number{num: float64(sum.num*u.each*n.den) + n.num, den: n.den}
		from, at, last = numFrom, skipSpace(body, numTo), u
		if at == len(body) {
			return sum, nil, r.fail(numFrom, numTo, "a number without a unit",
				"a figure in "+quote(u.next)+" there", `write "`+r.text[:numTo]+" "+u.next+r.text[r.end:]+`"`)
		}
	}
}

// startsNumber tells whether a number without a sign begins at text.
func startsNumber(text string) bool {
	if isDigit(text[0]) || text[0] == '.' && len(text) > 1 && isDigit(text[1]) {
		return true
	}
	_, _, size := vulgar(text)
	return size > 0
}

func numberEnd(text string, from int) int {
	_, _, to, _ := scanNumber(text, from)
	return to
}

// unit finds a unit by any spelling, or nil.
func (s *scale) unit(name string) *unit {
	for i := range s.units {
		if s.units[i].name == name {
			return &s.units[i]
		}
	}
	if name == "" {
		return nil
	}
	name = plainSpaces(name)
	for i := range s.units {
		if slices.Contains(s.units[i].also, name) {
			return &s.units[i]
		}
	}
	for i := range s.units {
		if !s.units[i].strict && s.units[i].folds(name) {
			return &s.units[i]
		}
	}
	return nil
}

// folds tells whether name is a spelling of the unit but for letter case.
func (u *unit) folds(name string) bool {
	if strings.EqualFold(u.name, name) {
		return true
	}
	for _, other := range u.also {
		if strings.EqualFold(other, name) {
			return true
		}
	}
	return false
}

// plainSpaces makes each run of spaces of any width one ordinary space.
func plainSpaces(name string) string {
	for i := range len(name) {
		if name[i] >= utf8.RuneSelf || name[i] == ' ' {
			fields := strings.FieldsFunc(name, func(r rune) bool { return unicode.Is(unicode.Zs, r) })
			return strings.Join(fields, " ")
		}
	}
	return name
}

func (s *scale) unitNames() []string {
	names := make([]string, 0, len(s.units)+1)
	for i := range s.units {
		names = append(names, s.units[i].name)
	}
	if s.gauges {
		names = append(names, "AWG")
	}
	return names
}

// permits is the one door: finite, in range, not absurdly small.
func (s *scale) permits(value float64) bool {
	if value == 0 {
		return !s.noZero && s.lowest <= 0
	}
	// NaN fails every comparison and so is not permitted.
	return value >= s.lowest && value <= s.highest && math.Abs(value) >= s.smallest
}

// limits says in words what permits allows.
func (s *scale) limits() string {
	highest := s.print(s.highest)
	switch {
	case s == &level:
		return Significant(s.lowest, 4) + " to " + Significant(s.highest, 4) + " in dBV, dBu or dB, or " + levelVolts.limits()
	case s.lowest < 0:
		return "from " + s.print(s.lowest) + " to " + highest
	case s.noZero:
		return "from " + s.print(s.smallest) + " to " + highest
	}
	return "from " + s.print(s.smallest) + " to " + highest + ", or 0"
}

// wanted says what the scale expects, with an example.
func (s *scale) wanted() string {
	return wording.WithArticle(s.name) + ` such as "` + s.example + `"`
}

// print writes a value in its natural unit with at most four significant digits.
func (s *scale) print(value float64) string {
	u := s.natural(value)
	return Significant(value*u.div/u.mul, 4) + " " + u.name
}

// exact writes a value so that parsing it gives the same float64: as print does
// where that is enough, else with as many digits as it takes.
func (s *scale) exact(value float64) string {
	if text := s.print(value); s.means(text, value) {
		return text
	}
	u := s.natural(value)
	if text := strconv.FormatFloat(value*u.div/u.mul, 'f', -1, 64) + " " + u.name; s.means(text, value) {
		return text
	}
	return strconv.FormatFloat(value, 'f', -1, 64) + " " + s.units[0].name
}

// means tells whether the text reads as exactly this value.
func (s *scale) means(text string, value float64) bool {
	read, err := s.parse(text)
	return err == nil && read == value
}

// natural gives the unit a value of this size prints in.
func (s *scale) natural(value float64) *unit {
	if len(s.prints) == 0 || value == 0 || math.IsNaN(value) {
		return &s.units[0]
	}
	// Half a unit in the fourth digit: 999.96 ohm rounds up and is 1 kohm.
	const roundsUp = 1 - 0.5e-4
	name := s.prints[0].unit
	for _, p := range s.prints {
		if math.Abs(value) >= p.from*roundsUp {
			name = p.unit
		}
	}
	return s.unit(name)
}
