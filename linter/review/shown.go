package review

import "strconv"

// How much of a review is written out, in every form of it, before the rest is
// counted.
const (
	MostNames  = 8 // of equal parts of one line or unit
	MostInFull = 2 // of findings of one criterion
	mostGroups = 8 // of lines or units with equal parts
)

// What stands in every form of a review.
const (
	// Scope says how far a review goes.
	Scope = "This covers only what the criteria and checks ask; it does not replace local codes, licensed practice or the reviewer's own judgement."
	// Agreements stands above what was departed from.
	Agreements = "The design states these agreements; whether they were made is for the reviewer to say."
)

// Shown names the parts of answers as far as they are written out: a text for the
// equal parts of each line or unit, and a last one that counts further ones.
func Shown(group Group) []string {
	all := Parts(group, MostNames)
	if more := len(all) - mostGroups; more > 0 {
		return append(all[:mostGroups], "and parts of "+strconv.Itoa(more)+" more")
	}
	return all
}
