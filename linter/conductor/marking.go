package conductor

import "strings"

// Marking is what the marking of a cable says by the National Electrical Code of the United States. A cable may bear
// several.
//
// The order of substitution is that of NEC (2020) Table 725.154(A) and its figure, from memory: CMP may stand for CL3P, and that
// for CL2P; each plenum cable for the riser cable of its kind, that for the general one, that for the one of limited use;
// each CM for the CL3 of its place, and that for the CL2; PLTC for CL3 and CL2. Cable of limited use (X) counts for its
// class, wherever it lies. Markings of other articles (FPL for fire
// alarms, OFN, BL) are no part of it and are not recognised.
type Marking struct{ kinds []kind }

// kind is one type of cable.
type kind struct {
	class int // 1: a wiring method for power, so for every class; else the highest of 2 and 3
	// air: may lie in a space that carries air without a raceway around it
	air bool
	raw bool // single conductors, which need a raceway wherever they lie
}

// kinds of cable by the marking.
func kindOf(mark string) (kind, bool) {
	switch mark {
	case "CL2P":
		return kind{class: 2, air: true}, true
	case "CL2", "CL2R", "CL2X":
		return kind{class: 2}, true
	case "CL3P", "CMP":
		return kind{class: 3, air: true}, true
	case "CL3", "CL3R", "CL3X", "CM", "CMG", "CMR", "CMX", "PLTC":
		return kind{class: 3}, true
	case "MC", "MI":
		return kind{class: 1, air: true}, true
	case "NM", "NMC", "TC", "UF":
		return kind{class: 1}, true
	case "THHN", "THWN", "THW", "TW", "XHHW", "RHH", "RHW", "TFN", "TFFN":
		return kind{class: 1, raw: true}, true
	}
	return kind{}, false
}

// ParseMarking reads what is printed on a cable, such as "CL3P" or "CL3P or FPLP". It is not ok when it holds no marking
// that is recognised.
func ParseMarking(text string) (Marking, bool) {
	var m Marking
	for _, mark := range strings.FieldsFunc(strings.ToUpper(text), func(r rune) bool {
		return (r < 'A' || r > 'Z') && (r < '0' || r > '9')
	}) {
		if k, ok := kindOf(mark); ok {
			m.kinds = append(m.kinds, k)
		}
	}
	return m, len(m.kinds) > 0
}

// Serves tells that the cable may be used on a circuit of a class (1, 2 or 3), in a void that carries air or elsewhere, in
// a raceway or without.
//
// Class 2 and 3 circuits may use the cable of their class or a substitute, or the wiring methods of Class 1 (725.130).
// Class 1 circuits take the wiring methods of power circuits only (725.46). In a void that carries air it has to be plenum
// cable, or metal-clad, or lie in a metal raceway (725.135(C), 300.22(C)). All by NEC (2020), from memory.
func (m Marking) Serves(class int, air, raceway bool) bool {
	for _, k := range m.kinds {
		switch {
		case k.class != 1 && (class == 1 || k.class < class):
		case k.raw && !raceway:
		case air && !k.air && !raceway:
		default:
			return true
		}
	}
	return false
}

// Class is the most demanding class the cable serves: 1 before 3 before 2.
func (m Marking) Class() int {
	highest := 0
	for _, k := range m.kinds {
		if k.class == 1 {
			return 1
		}
		highest = max(highest, k.class)
	}
	return highest
}
