package quantity

import (
	"strconv"
	"unicode/utf8"
)

// Unstated stands for an X in an ingress code: that digit was not tested.
const Unstated = -1

// Ingress is a degree of protection by the IP code of IEC 60529.
type Ingress struct {
	Solids int // 0 to 6, or Unstated
	Water  int // 0 to 9, or Unstated
}

var ingressScale = scale{name: "ingress protection", example: "IP34"}

// ParseIngress reads an IP code such as "IP34" or "IPX4". The additional and
// supplementary letters of the standard are refused: nothing here judges them.
func ParseIngress(text string) (Ingress, error) {
	if err := ingressScale.admit(text); err != nil {
		return Ingress{}, err
	}
	r := reading{scale: &ingressScale, text: text, end: len(text)}
	from, to := trimSpace(text, 0, len(text))
	code := text[from:to]
	if len(code) < 2 || code[0]|0x20 != 'i' || code[1]|0x20 != 'p' {
		hint := ""
		if len(code) == 2 && isDigit(code[0]) && isDigit(code[1]) {
			hint = `write "IP` + code + `"`
		}
		return Ingress{}, r.fail(from, to, "which does not start with IP", ingressScale.wanted(), hint)
	}
	digits := skipSpace(text, from+2)
	if to-digits < 2 {
		return Ingress{}, r.fail(from, to, "without two digits", ingressScale.wanted(), "write X for a digit that is not stated")
	}
	solids, ok := ingressDigit(text[digits], 6)
	if !ok {
		return Ingress{}, r.fail(digits, runeEnd(text, digits), "as the digit for solid objects", "0 to 6 or X there", "")
	}
	water, ok := ingressDigit(text[digits+1], 9)
	if !ok {
		return Ingress{}, r.fail(digits+1, runeEnd(text, digits+1), "as the digit for water", "0 to 9 or X there", "")
	}
	if to-digits > 2 {
		return Ingress{}, r.fail(digits+2, to, "after the two digits", `nothing after "`+text[from:digits+2]+`"`, "")
	}
	return Ingress{Solids: solids, Water: water}, nil
}

func runeEnd(text string, i int) int {
	_, size := utf8.DecodeRuneInString(text[i:])
	return i + size
}

func ingressDigit(c byte, highest int) (int, bool) {
	if c == 'X' || c == 'x' {
		return Unstated, true
	}
	digit := int(c) - '0'
	return digit, digit >= 0 && digit <= highest
}

func (i Ingress) String() string { return "IP" + ingressText(i.Solids) + ingressText(i.Water) }

func ingressText(digit int) string {
	if digit == Unstated {
		return "X"
	}
	return strconv.Itoa(digit)
}
