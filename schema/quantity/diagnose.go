package quantity

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"loudlint/schema/wording"
)

// This file words what is wrong with a text that could not be read. Nothing here
// runs for a text that can.

// fail makes the error whose culprit is text[from:to], described by the phrase.
func (r reading) fail(from, to int, phrase, expected, hint string) error {
	if from == to {
		return &Error{Found: "nothing", Expected: expected, Hint: hint, Offset: from}
	}
	found := quote(r.text[from:to])
	if phrase != "" {
		separator := " "
		if strings.HasPrefix(phrase, "which") || strings.HasPrefix(phrase, "a ") || strings.HasPrefix(phrase, "an ") {
			separator = ", "
		}
		found += separator + phrase
	}
	return &Error{Found: found, Expected: expected, Hint: hint, Offset: from, Length: to - from}
}

// write is the hint to write these forms instead of text[from:to].
func (r reading) write(from, to int, forms ...string) string {
	for i, form := range forms {
		forms[i] = `"` + strings.TrimSpace(r.text[:from]+form+r.text[to:]) + `"`
	}
	return "write " + wording.Listed(forms, "or")
}

// exampleUnit is the unit that the example of the scale shows.
func (s *scale) exampleUnit() string {
	_, name, _ := strings.Cut(s.example, " ")
	if at := strings.LastIndexByte(name, ' '); at >= 0 {
		name = name[at+1:] // "2 x 1.5 mm2"
	}
	return name
}

// badNumber words a fault of the number at text[from:to].
func (r reading) badNumber(from, to int, bad fault) error {
	number := r.text[from:to]
	expected := r.wanted()
	if bad == faultGrouped && strings.Contains(number, ",") {
		bad = faultComma // "1 200,5"
	}
	switch bad {
	case noFault, faultMissing:
	case faultComma:
		if to == r.end { // the unit is missing too: the right form shows it
			return r.fail(from, to, "a number with a comma", expected, r.write(from, to, withUnit(commaForms(number), r.exampleUnit())...))
		}
		return r.fail(from, to, "a number with a comma", expected, r.write(from, to, commaForms(number)...))
	case faultGrouped:
		joined := strings.Join(strings.Fields(plainSpaces(number)), "")
		return r.fail(from, to, "a number with spaces in it", expected, r.write(from, to, joined))
	case faultExponent:
		hint := ""
		if value, err := strconv.ParseFloat(strings.TrimPrefix(plainMinus(number), "+"), 64); err == nil && readable(value) {
			hint = r.write(from, to, strconv.FormatFloat(value, 'f', -1, 64))
		}
		return r.fail(from, to, "a number with an exponent", expected, hint)
	case faultHex:
		return r.fail(from, to, "a hexadecimal number", expected, "")
	case faultPoint:
		hint := ""
		if whole := strings.TrimSuffix(number, "."); strings.Count(number, ".") == 1 && whole != number {
			hint = r.write(from, to, whole)
		}
		return r.fail(from, to, "a number with a misplaced point", expected, hint)
	case faultZeroDenominator:
		return r.fail(from, to, "a fraction with 0 below the line", expected, "")
	case faultFraction:
		return r.fail(from, to, "which is no plain fraction", `a fraction such as "1/8" or "7 1/2"`, "")
	}
	return r.missingNumber(from, to)
}

// readable tells whether a value written plainly stays readable.
func readable(value float64) bool { return value > -1e12 && value < 1e12 }

// plainMinus puts a hyphen for every accepted minus.
func plainMinus(number string) string {
	return strings.NewReplacer("−", "-", "–", "-", " ", "").Replace(number)
}

// commaForms gives the numbers that one with commas may mean: with a point where
// there is one comma, without the commas where they part groups of three.
func commaForms(number string) []string {
	plain := plainMinus(plainSpaces(number))
	sign := plain[:len(plain)-len(strings.TrimLeft(plain, "+-"))]
	groups := strings.Split(plain[len(sign):], ",")
	first := groups[0]
	whole, _, hasPoint := strings.Cut(groups[len(groups)-1], ".")

	thousands := allDigits(first) && len(first) <= 3 && first[0] != '0' && len(whole) == 3
	for i := 1; i < len(groups)-1; i++ {
		thousands = thousands && len(groups[i]) == 3
	}
	var forms []string
	if len(groups) == 2 && !hasPoint {
		if first == "" {
			first = "0"
		}
		// In "1.200,5" the point parts the thousands.
		decimal := strings.TrimRight(strings.ReplaceAll(first, ".", "")+"."+whole, "0")
		forms = append(forms, sign+strings.TrimSuffix(decimal, "."))
	}
	if thousands || len(forms) == 0 {
		forms = append(forms, sign+strings.Join(groups, ""))
	}
	return forms
}

func withUnit(forms []string, unit string) []string {
	for i := range forms {
		forms[i] += " " + unit
	}
	return forms
}

// missingNumber words a text that does not start with a number.
func (r reading) missingNumber(from, to int) error {
	if r.start == r.end {
		return r.fail(r.start, r.end, "", r.wanted(), "")
	}
	rest := r.text[skipSpace(r.text[:r.end], to):r.end]
	if r.unit(rest) != nil {
		return r.fail(from, r.end, "a unit without a number", r.wanted(), "")
	}
	return r.fail(r.start, r.end, "which does not start with a number", r.wanted(), "")
}

// badUnit words what stands at text[at:] after the number text[from:to] and is no
// unit of the scale.
func (r reading) badUnit(from, to, at int) error {
	number, name := r.text[from:to], plainSpaces(r.text[at:r.end])
	if name == "" {
		return r.fail(from, to, "a number without a unit", r.wanted(),
			r.write(from, to, number+" "+r.exampleUnit()))
	}
	if strings.ContainsAny(name, `'"′″’”`) {
		return r.footMarks(from, at)
	}
	if end := secondNumber(name); end > 0 {
		hint := ""
		if strings.Contains(name[:end], "/") { // "7-1/2 W"
			hint = r.write(to, r.end, strings.Replace(name, name[:len(name)-len(strings.TrimLeft(name, "-–−"))], " ", 1))
		}
		return r.fail(from, r.end, "which has two numbers", r.wanted(), hint)
	}
	other := r.otherDimension(name)
	if advice, ok := r.advice(name, number); ok {
		return r.fail(from, r.end, other, r.wanted(), advice)
	}
	if near := r.strictUnits(name); len(near) > 0 {
		return r.fail(at, r.end, "as a unit, where capital and small letters differ in meaning",
			r.expectedUnit(), r.write(at, r.end, near...))
	}
	if other != "" {
		return r.fail(from, r.end, other, r.wanted(), "")
	}
	if known, ok := r.unitBefore(at); ok {
		extra := skipSpace(r.text[:r.end], known)
		return r.fail(extra, r.end, "after a complete value", `nothing after "`+r.text[r.start:known]+`"`, "")
	}
	return r.fail(at, r.end, "as a unit", r.expectedUnit(), r.nearest(number, name))
}

// secondNumber tells whether what follows a number is a dash and another number
// ("6-8 W", "7-1/2 W"), and where that ends.
func secondNumber(rest string) (end int) {
	i, negative := scanSign(rest, 0)
	if !negative {
		return 0
	}
	if _, from, to, bad := scanNumber(rest, i); bad == noFault && to > from {
		return to
	}
	return 0
}

// advice finds the slip of this name: as written, else in other letter case
// where no unit of the scale is meant by that.
func (s *scale) advice(name, number string) (string, bool) {
	for _, slip := range s.slips {
		if slip.unit == name || strings.EqualFold(slip.unit, name) && len(s.strictUnits(name)) == 0 {
			return strings.ReplaceAll(slip.advice, "#", number), true
		}
	}
	return "", false
}

// footMarks words inch and foot marks and other quotes. Inside the quotes of a
// design file an inch mark ends the text.
func (r reading) footMarks(from, at int) error {
	to := at
	for i, c := range r.text[at:r.end] {
		if strings.ContainsRune(`'"′″’”`, c) {
			from, to = at+i, at+i+utf8.RuneLen(c)
			break
		}
	}
	hint := ""
	if r.unit("ft") != nil && r.unit("in") != nil {
		words := strings.NewReplacer(`''`, " in ", "'", " ft ", "′", " ft ", "’", " ft ", `"`, " in ", "″", " in ", "”", " in ")
		right := plainSpaces(words.Replace(r.text[r.start:r.end]))
		if _, err := length.parse(right); err == nil {
			hint = `write "` + right + `"`
		}
	}
	return r.fail(from, to, "as a unit", r.wanted(), hint)
}

// strictUnits gives the units that name would be but for the case of its letters,
// where that case has a meaning.
func (s *scale) strictUnits(name string) []string {
	var names []string
	for i := range s.units {
		if u := &s.units[i]; u.strict && u.folds(name) {
			names = append(names, u.name)
		}
	}
	return names
}

// otherDimension says of which other kind a unit is: "which is a voltage".
func (r reading) otherDimension(name string) string {
	for _, s := range scales {
		if s.name != r.name && s.unit(name) != nil {
			return "which is " + wording.WithArticle(s.name)
		}
	}
	if strings.EqualFold(name, "AWG") {
		return "which is a conductor size"
	}
	return ""
}

// unitBefore finds the end of a unit of the scale that stands at text[at:] before
// a space or a mark.
func (r reading) unitBefore(at int) (end int, ok bool) {
	for i, c := range r.text[at:r.end] {
		if strings.ContainsRune(" ,;/+", c) && r.unit(r.text[at:at+i]) != nil {
			end, ok = at+i, true
		}
	}
	return end, ok
}

// expectedUnit lists the units of the scale.
func (s *scale) expectedUnit() string {
	return wording.WithArticle(s.name) + " in " + wording.Listed(s.unitNames(), "or")
}

// nearest is the hint with the unit whose spelling is nearest, or "".
func (r reading) nearest(number, name string) string {
	best, bestDistance := "", 3
	for i := range r.units {
		u := &r.units[i]
		for _, spelling := range append([]string{u.name}, u.also...) {
			distance := editDistance(strings.ToLower(name), strings.ToLower(spelling))
			longer := max(utf8.RuneCountInString(name), utf8.RuneCountInString(spelling))
			if distance < bestDistance && distance < longer {
				best, bestDistance = u.name, distance
			}
		}
	}
	if best == "" {
		return ""
	}
	return `did you mean "` + number + " " + best + `"?`
}

// editDistance counts the letters to insert, delete, replace or swap.
func editDistance(a, b string) int {
	from, to := []rune(a), []rune(b)
	before, last, next := make([]int, len(to)+1), make([]int, len(to)+1), make([]int, len(to)+1)
	for j := range last {
		last[j] = j
	}
	for i := range from {
		next[0] = i + 1
		for j := range to {
			cost := 1
			if from[i] == to[j] {
				cost = 0
			}
			next[j+1] = min(last[j]+cost, last[j+1]+1, next[j]+1)
			if i > 0 && j > 0 && from[i] == to[j-1] && from[i-1] == to[j] {
				next[j+1] = min(next[j+1], before[j-1]+1)
			}
		}
		before, last, next = last, next, before
	}
	return last[len(to)]
}

// outOfRange words a value that the scale does not permit.
func (r reading) outOfRange(value float64) error {
	from, to := trimSpace(r.text, r.start, r.end)
	phrase := "which is out of range"
	switch {
	case value == 0:
		phrase = "which is zero"
	case value < 0 && r.lowest >= 0:
		phrase = "which is negative"
	case math.Abs(value) < r.smallest:
		phrase = "which is too near zero"
	}
	return r.fail(from, to, phrase, wording.WithArticle(r.name)+" "+r.limits(), "")
}
