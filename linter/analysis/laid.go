package analysis

import (
	"fmt"

	"loudlint/schema"
	"loudlint/schema/quantity"
)

// CableLaid is how much cable is laid for the line: home run, legs, spacings and
// the way back of a ring, those of runs as often as they are laid.
func (l *Line) CableLaid() Figure[quantity.Length] {
	if whole, ok := l.Whole(); ok {
		return whole.Length
	}
	c := laidCable{walk: deviceWalk{line: l}}
	c.chain(l.Part.Devices, 1)
	if closing, _, ok := l.Closing(); ok {
		c.add(closing.Length, 1)
	}
	if c.f.Known() {
		c.f.Value = quantity.Length(roundMetres(float64(c.f.Value)))
		c.f.Sum = fmt.Sprintf("%s = %s", terms(c.terms), c.f.Value)
	}
	return c.f
}

// laidCable adds up cable, runs at one stroke.
type laidCable struct {
	walk  deviceWalk
	f     Figure[quantity.Length]
	terms []string
}

func (c *laidCable) add(f Figure[quantity.Length], times int) {
	c.f.Missing = MergeMissing(c.f.Missing, f.Missing)
	if !f.Known() || f.Value == 0 {
		return
	}
	c.f.Value += f.Value * quantity.Length(times)
	c.f.From = append(c.f.From, f.From...)
	text := f.Value.String()
	if times > 1 {
		text = fmt.Sprintf("%d × %s", times, f.Value)
	}
	c.terms = append(c.terms, text)
}

// chain adds up what leads to devices. It calls itself for what braces enclose;
// the dialect bounds their nesting.
func (c *laidCable) chain(devices []schema.Device, times int) {
	for _, device := range devices {
		p := device.Common()
		count := p.Count()
		if _, old := device.(*schema.Existing); old {
			count = 1
		}
		d := Device{Kind: schema.DeviceKind(device), Of: device}
		for _, leg := range c.walk.laid(&d, p, 0, schema.Value[string]{}) {
			c.add(leg.Length, times)
		}
		if count > 1 {
			for _, leg := range c.walk.laid(&d, p, 1, schema.Value[string]{}) {
				c.add(leg.Length, times*(count-1))
			}
		}
		if inside := device.Inside(); len(inside) > 0 {
			c.chain(inside, times*count)
		}
	}
}
