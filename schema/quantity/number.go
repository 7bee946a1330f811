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
	start = i
	negative := false
	i, negative = scanSign(text, i)
	first := i
	mantissa, digits, decimals := uint64(0), 0, 0
	for ; i < len(text) && isDigit(text[i]); i++ {
		mantissa = mantissa*10 + uint64(text[i]-'0')
		digits++
	}
	whole := digits
	if i < len(text) && text[i] == '.' {
		for i++; i < len(text) && isDigit(text[i]); i++ {
			mantissa = mantissa*10 + uint64(text[i]-'0')
			digits++
			decimals++
		}
		if decimals == 0 || i < len(text) && text[i] == '.' {
			if digits == 0 {
				return n, start, i, faultMissing
			}
			return n, start, numberish(text, first), faultPoint
		}
	}
	if digits == 0 {
		if num, den, size := vulgar(text[i:]); size > 0 {
			return signed(num, den, negative), start, i + size, noFault
		}
		if i < len(text) && text[i] == ',' && i+1 < len(text) && isDigit(text[i+1]) {
			return n, start, numberish(text, first), faultComma
		}
		return n, start, i, faultMissing
	}

	n = number{num: float64(mantissa), den: math.Pow10(decimals)}
	if digits > exactDigits {
		value, err := strconv.ParseFloat(text[first:i], 64)
		if err != nil {
			return n, start, i, faultMissing
		}
		n = number{num: value, den: 1}
	}
	if negative {
		n.num = -n.num
	}
	if i == len(text) {
		return n, start, i, noFault
	}

	switch c := text[i]; {
	case c == ',' && i+1 < len(text) && isDigit(text[i+1]):
		return n, start, numberish(text, first), faultComma
	case (c == 'e' || c == 'E') && exponentAt(text, i+1) > 0:
		return n, start, exponentAt(text, i+1), faultExponent
	case (c == 'x' || c == 'X') && text[first:i] == "0" && i+1 < len(text) && isHex(text[i+1]):
		for i++; i < len(text) && isHex(text[i]); i++ {
		}
		return n, start, i, faultHex
	case c == '/' || c == ' ' || c >= utf8.RuneSelf:
		if fraction, next, bad := scanFraction(text, first, i, whole == digits); next > 0 {
			return signed(fraction.num, fraction.den, negative), start, next, bad
		}
	}
	return n, start, i, noFault
}

// scanFraction reads what makes the whole number text[first:i] a fraction: a
// slash and a denominator, or a second number with them, or a ready-made fraction
// such as ½. next is 0 where nothing of the kind follows.
func scanFraction(text string, first, i int, whole bool) (n number, next int, bad fault) {
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

func signed(num, den float64, negative bool) number {
	if negative {
		num = -num
	}
	return number{num: num, den: den}
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
		case isDigit(text[i]) || text[i] == '.' || text[i] == ',':
			i++
			end = i
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

// exponentAt gives the end of the exponent digits at text[i:], or 0.
func exponentAt(text string, i int) int {
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

func isHex(c byte) bool {
	return isDigit(c) || c >= 'a' && c <= 'f' || c >= 'A' && c <= 'F'
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
