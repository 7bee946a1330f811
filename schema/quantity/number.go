package quantity

import (
	"math"
	"strconv"
	"unicode"
	"unicode/utf8"
)

// number is a written number as a ratio of two whole numbers, so that "0.62",
// "62/100" and, after the unit is applied, "620 mW" all meet in one rounding and
// are the same float64.
type number struct {
	num, den float64 // num carries the sign; den is positive
}

// exactDigits is how many decimal digits a float64 always holds exactly.
const exactDigits = 15

// fault names what is wrong with a number; the wording is in diagnose.go.
type fault uint8

const (
	noFault fault = iota
	faultMissing
	faultComma
	faultGrouped
	faultExponent
	faultHex
	faultPoint
	faultZeroDenominator
	faultFraction
)

// scanNumber reads the number at text[i:]. It returns the number, the offsets of
// its first digit or sign and of the byte after it. On a fault, end is the end of
// what a person would take for the number.
func scanNumber(text string, i int) (n number, start, end int, bad fault) {
	first, negative := scanSign(text, i)
	if num, den, size := vulgar(text[first:]); size > 0 {
		n, end = number{num: num, den: den}, first+size
	} else {
		n, end, bad = scanDecimal(text, first)
		if bad == noFault && end < len(text) {
			n, end, bad = scanRest(text, first, end, n)
		}
	}
	if negative {
		n.num = -n.num
	}
	return n, i, end, bad
}

// scanDecimal reads digits with at most one point between or before them.
func scanDecimal(text string, first int) (n number, end int, bad fault) {
	mantissa, digits, decimals := uint64(0), 0, 0
	i := first
	for ; i < len(text) && isDigit(text[i]); i++ {
		mantissa = mantissa*10 + uint64(text[i]-'0')
		digits++
	}
	if i < len(text) && text[i] == '.' {
		for i++; i < len(text) && isDigit(text[i]); i++ {
			mantissa = mantissa*10 + uint64(text[i]-'0')
			decimals++
		}
		digits += decimals
		if digits > 0 && (decimals == 0 || i < len(text) && text[i] == '.') {
			return n, numberish(text, first), faultPoint
		}
	}
	switch {
	case digits == 0 && commaAt(text, i):
		return n, numberish(text, first), faultComma
	case digits == 0:
		return n, i, faultMissing
	case digits > exactDigits:
		// Only an overflow can fail, and no text is long enough for one.
		value, _ := strconv.ParseFloat(text[first:i], 64)
		return number{num: value, den: 1}, i, noFault
	}
	return number{num: float64(mantissa), den: math.Pow10(decimals)}, i, noFault
}

// scanRest looks at what follows the decimal n at text[first:i] and still belongs
// to the number: the rest of a fraction, or something that is refused.
func scanRest(text string, first, i int, n number) (whole number, end int, bad fault) {
	switch c := text[i]; {
	case commaAt(text, i):
		return n, numberish(text, first), faultComma
	case (c == 'e' || c == 'E') && exponentEnd(text, i+1) > 0:
		return n, exponentEnd(text, i+1), faultExponent
	case (c == 'x' || c == 'X') && text[first:i] == "0" && hexEnd(text, i+1) > i+1:
		return n, hexEnd(text, i+1), faultHex
	case c == '/' || c == ' ' || c >= utf8.RuneSelf:
		if fraction, next, bad := scanFraction(text, first, i); next > 0 {
			return fraction, next, bad
		}
	}
	return n, i, noFault
}

// scanFraction reads what makes the whole number text[first:i] a fraction: a
// slash and a denominator, or a second number with them, or a ready-made fraction
// such as ½. next is 0 where nothing of the kind follows.
func scanFraction(text string, first, i int) (n number, next int, bad fault) {
	whole := allDigits(text[first:i])
	if size := slash(text[i:]); size > 0 && i+size < len(text) && isDigit(text[i+size]) {
		end := digitsEnd(text, i+size)
		return ratio(text[first:i], text[i+size:end], whole, end)
	}
	second := skipSpace(text, i)
	if num, den, size := vulgar(text[second:]); size > 0 {
		if !whole {
			return n, second + size, faultFraction
		}
		value, _ := strconv.ParseFloat(text[first:i], 64)
		return number{num: float64(value*den) + num, den: den}, second + size, noFault
	}
	if second == i || second == len(text) || !isDigit(text[second]) {
		return n, 0, noFault
	}
	end := digitsEnd(text, second)
	size := slash(text[end:])
	if size == 0 || end+size == len(text) || !isDigit(text[end+size]) {
		return n, numberish(text, first), faultGrouped
	}
	last := digitsEnd(text, end+size)
	part, next, bad := ratio(text[second:end], text[end+size:last], whole, last)
	if bad != noFault {
		return part, next, bad
	}
	if part.num >= part.den {
		return part, next, faultFraction
	}
	value, _ := strconv.ParseFloat(text[first:i], 64)
	return number{num: float64(value*part.den) + part.num, den: part.den}, next, noFault
}

// ratio makes a fraction of two runs of digits.
func ratio(over, under string, whole bool, end int) (number, int, fault) {
	const longest = 9 // digits, so that later sums stay exact
	if !whole || len(over) > longest || len(under) > longest {
		return number{}, end, faultFraction
	}
	num, _ := strconv.ParseFloat(over, 64)
	den, _ := strconv.ParseFloat(under, 64)
	if den == 0 {
		return number{}, end, faultZeroDenominator
	}
	return number{num: num, den: den}, end, noFault
}

// scanSign skips a sign and the spaces after it. The minus may be a hyphen, the
// minus sign U+2212, or the en dash that word processors put in its place.
func scanSign(text string, i int) (next int, negative bool) {
	if i == len(text) {
		return i, false
	}
	switch c := text[i]; {
	case isDigit(c):
		return i, false
	case c == '+':
		return skipSpace(text, i+1), false
	case c == '-':
		return skipSpace(text, i+1), true
	case c == 0xE2:
		if r, size := utf8.DecodeRuneInString(text[i:]); r == '−' || r == '–' {
			return skipSpace(text, i+size), true
		}
	}
	return i, false
}

// vulgar reads a ready-made fraction character.
func vulgar(text string) (num, den float64, size int) {
	if text == "" || text[0] < utf8.RuneSelf {
		return 0, 0, 0
	}
	r, size := utf8.DecodeRuneInString(text)
	switch r {
	case '½':
		return 1, 2, size
	case '¼':
		return 1, 4, size
	case '¾':
		return 3, 4, size
	case '⅓':
		return 1, 3, size
	case '⅔':
		return 2, 3, size
	case '⅛':
		return 1, 8, size
	case '⅜':
		return 3, 8, size
	case '⅝':
		return 5, 8, size
	case '⅞':
		return 7, 8, size
	}
	return 0, 0, 0
}

// slash gives the size of the fraction stroke at the start of text, or 0.
func slash(text string) int {
	if text == "" {
		return 0
	}
	if text[0] == '/' {
		return 1
	}
	if r, size := utf8.DecodeRuneInString(text); r == '⁄' {
		return size
	}
	return 0
}

// numberish gives the end of the run of digits, points, commas and inner spaces
// that a person would take for one number.
func numberish(text string, i int) int {
	end := i
	for i < len(text) {
		switch {
		case isDigit(text[i]) || text[i] == '.':
			i++
			end = i
		case text[i] == ',':
			i++ // part of the number only if a digit follows
		default:
			next := skipSpace(text, i)
			if next == i || next == len(text) || !isDigit(text[next]) {
				return end
			}
			i = next
		}
	}
	return end
}

// commaAt tells whether a comma before a digit stands at text[i].
func commaAt(text string, i int) bool {
	return i+1 < len(text) && text[i] == ',' && isDigit(text[i+1])
}

// exponentEnd gives the end of the exponent digits at text[i:], or 0.
func exponentEnd(text string, i int) int {
	if i < len(text) && (text[i] == '+' || text[i] == '-') {
		i++
	}
	if end := digitsEnd(text, i); end > i {
		return end
	}
	return 0
}

func digitsEnd(text string, i int) int {
	for i < len(text) && isDigit(text[i]) {
		i++
	}
	return i
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

func allDigits(text string) bool { return text != "" && digitsEnd(text, 0) == len(text) }

func hexEnd(text string, i int) int {
	for i < len(text) && (isDigit(text[i]) || text[i]|0x20 >= 'a' && text[i]|0x20 <= 'f') {
		i++
	}
	return i
}

// skipSpace passes over spaces of any width.
func skipSpace(text string, i int) int {
	for i < len(text) {
		if text[i] == ' ' {
			i++
			continue
		}
		if text[i] < utf8.RuneSelf {
			return i
		}
		r, size := utf8.DecodeRuneInString(text[i:])
		if !unicode.Is(unicode.Zs, r) {
			return i
		}
		i += size
	}
	return i
}

// trimSpace narrows text[start:end] by the spaces at both ends.
func trimSpace(text string, start, end int) (int, int) {
	for end > start {
		if text[end-1] == ' ' {
			end--
			continue
		}
		if text[end-1] < utf8.RuneSelf {
			break
		}
		r, size := utf8.DecodeLastRuneInString(text[start:end])
		if !unicode.Is(unicode.Zs, r) {
			break
		}
		end -= size
	}
	return min(skipSpace(text, start), end), end
}
