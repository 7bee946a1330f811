package analysis

import "strconv"

// plural counts things: "1 loudspeaker", "3 loudspeakers".
func plural(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return strconv.Itoa(n) + " " + noun + "s"
}
