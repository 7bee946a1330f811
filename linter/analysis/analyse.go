package analysis

import "loudlint/schema"

// Analyse works out a design, on at most `workers` goroutines (0: as many as
// there are processors). The result is the same for any number.
func Analyse(design *schema.Design, workers int) *System {
	return &System{Design: design}
}
