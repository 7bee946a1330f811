package analysis

import (
	"fmt"

	"loudlint/linter/signal"
	"loudlint/schema"
	"loudlint/schema/quantity"
	"loudlint/schema/source"
)

// Balance tells how a lead carries its signal.
type Balance int

// Balances.
const (
	UnknownBalance Balance = iota
	Balanced               // both ends are balanced
	Unbalanced             // at least one end is not
)

// Lead is a microphone or line lead of which the length is stated.
type Lead struct {
	// Feed or Link is what it belongs to.
	Feed   *Feed
	Link   *Link
	Length schema.Value[quantity.Length]
	// Balance is that of the whole lead; Why are the places it follows from, or
	// Missing what keeps it from being known.
	Balance Balance
	Why     []schema.Place
	Missing []Missing
	// Own is the impedance of what drives the lead.
	Own Figure[quantity.Resistance]
}

// ends are what is known of the two ends of a lead.
type ends struct {
	out        schema.Value[bool] // whether what drives it is balanced
	outName    string
	outMissing Missing
	into       *Input
	whichInput []Missing // what is not said of it
	plug       schema.Value[string]
	cores      int // of the plug, 0 when that is not known
	needed     int // contacts that a balanced signal takes
}

// LeadOf gives the lead of a plug; nil where no length is stated, or where it
// carries data or a contact.
func (s *System) LeadOf(f *Feed) *Lead {
	if !f.Part.Lead.Set() || f.Into == nil || f.Into.noLevel() {
		return nil
	}
	l := &Lead{Feed: f, Length: f.Part.Lead}
	src := f.Source
	l.Own = ownImpedance(src.Part.Impedance, "impedance of "+src.Part.Name, src.Missing("impedance", `impedance = "200 ohm"`))
	needed := 3 // conductors of a balanced channel with its shield
	if two, _ := src.TwoChannels(); two {
		needed = 5 // and of two
	}
	l.settle(ends{
		out: src.Part.Balanced, outName: src.Part.Name, outMissing: src.Missing("whether it is balanced", "balanced = true"),
		into: f.Into, whichInput: f.Into.whichInput(src), plug: f.Part.Connector, cores: s.Cores(f.Part.Connector.V), needed: needed,
	})
	return l
}

// LeadOfLink gives the lead of a send; nil where no length is stated.
func (*System) LeadOfLink(k *Link) *Lead {
	send, out := k.Part.Send, k.Part.Output
	if !send.Lead.Set() || out == nil || k.Into.noLevel() {
		return nil
	}
	l := &Lead{Link: k, Length: send.Lead}
	l.Own = ownImpedance(out.Impedance, "impedance of "+out.Name, k.MissingOfOutput("impedance", `impedance = "100 ohm"`))
	var which []Missing
	if k.Into.Part == nil {
		which = []Missing{k.MissingInput()}
	}
	l.settle(ends{out: out.Balanced, outName: out.Name + " of " + k.From.Part.Name, outMissing: k.MissingOfOutput("whether it is balanced", "balanced = true"), into: k.Into, whichInput: which})
	return l
}

// settle works out how the lead carries its signal: one end that is not
// balanced, or a plug without a contact for it, leaves the lead unbalanced.
func (l *Lead) settle(e ends) {
	stated := func(v schema.Value[bool], note string) {
		l.Why = append(l.Why, schema.Place{Span: v.Span, Note: note})
	}
	if e.out.Set() && !e.out.V {
		l.Balance = Unbalanced
		stated(e.out, e.outName+" is unbalanced")
	}
	if e.into.Part != nil && e.into.Part.Balanced.Set() && !e.into.Part.Balanced.V {
		l.Balance = Unbalanced
		stated(e.into.Part.Balanced, e.into.Name()+" is unbalanced")
	}
	if e.cores > 0 && e.cores < e.needed {
		l.Balance = Unbalanced
		l.Why = append(l.Why, schema.Place{Span: e.plug.Span, Note: fmt.Sprintf("the plug, %s, has too few contacts to be balanced", e.plug.V)})
	}
	if l.Balance == Unbalanced {
		return
	}
	if !e.out.Set() {
		l.Missing = append(l.Missing, e.outMissing)
	}
	switch {
	case e.into.Part == nil:
		l.Missing = append(l.Missing, e.whichInput...)
	case !e.into.Part.Balanced.Set():
		l.Missing = append(l.Missing, e.into.Missing("whether it is balanced", "balanced = true"))
	}
	if len(l.Missing) == 0 {
		l.Balance = Balanced
		stated(e.out, e.outName+" is balanced")
		stated(e.into.Part.Balanced, e.into.Name()+" is balanced")
	}
}

// Corner is the frequency at which the lead has taken 3 dB of the treble, with
// so much capacitance between its conductors. What it is assumed to be is not
// said here: that is who asks.
func (l *Lead) Corner(each quantity.Capacitance) Figure[quantity.Frequency] {
	if !l.Own.Known() {
		return Figure[quantity.Frequency]{Missing: l.Own.Missing}
	}
	hertz := quantity.Frequency(signal.CornerHz(float64(l.Own.Value), float64(each), float64(l.Length.V)))
	return Figure[quantity.Frequency]{
		Value: hertz,
		Sum:   fmt.Sprintf("1 / (2π × %s × %s × %s) = %s", l.Own.Value, each, l.Length.V, hertz),
		From:  append([]schema.Place{{Span: l.Length.Span, Note: "length of the lead"}}, l.Own.From...),
	}
}

// Longest is the length at which the lead would have its corner at a frequency.
func (l *Lead) Longest(each quantity.Capacitance, corner quantity.Frequency) quantity.Length {
	return quantity.Length(signal.LongestMetres(float64(l.Own.Value), float64(each), float64(corner)))
}

// Header is where the lead is written.
func (l *Lead) Header() source.Span {
	if l.Feed != nil {
		return l.Feed.Part.Header
	}
	return l.Link.Part.Send.Header
}
