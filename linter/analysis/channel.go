package analysis

import (
	"fmt"

	"loudlint/schema/quantity"
)

// Used is the load of a channel in per cent of its rating.
func (c *Channel) Used() Figure[quantity.Percent] {
	f := Figure[quantity.Percent]{Missing: MergeMissing(c.Load.Missing, c.Rated.Missing), Assumed: c.Load.Assumed}
	if !f.Known() || c.Rated.Value <= 0 {
		return f
	}
	f.Value = quantity.Percent(100 * c.Load.Value / c.Rated.Value)
	f.Sum = fmt.Sprintf("%s / %s = %s", c.Load.Value, c.Rated.Value, f.Value)
	f.From = append(append(f.From, c.Load.From...), c.Rated.From...)
	return f
}
