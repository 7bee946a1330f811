package schedule

import (
	"strconv"
	"strings"
)

// listed writes names in their order; three or more that are numbered on stand
// as "Floor 1 … Floor 12".
func listed(names []string) string {
	const fewest = 3
	var all []string
	for i := 0; i < len(names); {
		base, n, ok := numbered(names[i])
		end := i + 1
		for ok && end < len(names) {
			b, k, numbered := numbered(names[end])
			if !numbered || b != base || k != n+end-i {
				break
			}
			end++
		}
		if end-i >= fewest {
			all = append(all, names[i]+" … "+names[end-1])
		} else {
			all = append(all, names[i:end]...)
		}
		i = end
	}
	return strings.Join(all, ", ")
}

// numbered splits "Floor 12" into its base and its number.
func numbered(name string) (base string, n int, ok bool) {
	at := strings.LastIndexByte(name, ' ')
	if at < 0 {
		return "", 0, false
	}
	n, err := strconv.Atoi(name[at+1:])
	return name[:at], n, err == nil && n >= 0 && strconv.Itoa(n) == name[at+1:]
}
