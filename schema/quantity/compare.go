package quantity

import "math"

// limitTolerance is the relative error below which a value counts as exactly at
// its limit. It is far above what rounding adds up to in a network of a million
// loudspeakers and far below what any instrument shows.
const limitTolerance = 1e-9

// AtMost tells whether value is at or below limit, so that a decision does not
// hang on the last bit of a computed figure: values within 1e-9 of each other
// (relative to the greater magnitude) are equal. A limit of 0 has no such margin.
// NaN is never at most anything.
func AtMost[T ~float64](value, limit T) bool {
	return value <= limit || near(float64(value), float64(limit))
}

// AtLeast tells whether value is at or above limit, with the same tolerance as
// AtMost.
func AtLeast[T ~float64](value, limit T) bool {
	return value >= limit || near(float64(value), float64(limit))
}

// near compares finite values; an infinite difference or NaN is never near.
func near(a, b float64) bool {
	margin := limitTolerance * max(math.Abs(a), math.Abs(b))
	return math.Abs(a-b) <= margin && !math.IsInf(margin, 0)
}
