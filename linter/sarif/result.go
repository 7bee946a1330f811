package sarif

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"slices"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/linter/internal/jsonstream"
	"loudlint/schema/source"
	"loudlint/schema/wording"
)

// longestSnippet is how many bytes of a design are repeated in the log to show
// a place. What a person would edit is shorter; whole bodies of blocks are not.
const longestSnippet = 400

func resultOf(o *check.Outcome, j *linter.Judged, rules *rules, p *places) result {
	return result{
		RuleID:              o.Check.ID,
		RuleIndex:           rules.index(o.Check),
		Kind:                kindOf(o.Verdict),
		Level:               levelOf(o),
		Message:             message{Text: escaped(messageOf(o))},
		Locations:           []location{primaryLocation(o, j, p)},
		RelatedLocations:    p.noted(o.Related, 1),
		PartialFingerprints: map[string]string{"outcomeIdentity/v1": fingerprint(o.Identity)},
		BaselineState:       baselineOf(o.State),
		Suppressions:        suppressionsOf(o, j, p),
		Fixes:               fixesOf(o, p),
		Properties:          propertiesOf(o, p),
	}
}

func kindOf(v check.Verdict) string {
	switch v {
	case check.Pass:
		return "pass"
	case check.Fail:
		return "fail"
	case check.Open:
	}
	return "open"
}

// levelOf gives the severity of a failure. Nothing else may have a level.
func levelOf(o *check.Outcome) string {
	if o.Verdict != check.Fail {
		return "none"
	}
	return cmp.Or(o.Severity, check.Warning).String() // to SARIF, a fail without a level is a warning
}

func fingerprint(identity string) string {
	sum := sha256.Sum256([]byte(identity))
	return hex.EncodeToString(sum[:16])
}

// primaryLocation says where an outcome is and what it is about. What is about
// the design as a whole and has no place in it is in its first file.
func primaryLocation(o *check.Outcome, j *linter.Judged, p *places) location {
	l := location{LogicalLocations: []logicalLocation{logicalOf(o.Subject)}}
	switch {
	case !o.Primary.IsZero():
		l.PhysicalLocation = p.at(o.Primary)
		l.PhysicalLocation.Region.Snippet = snippetOf(o.Primary)
	case j.Design != nil && len(j.Design.Files) > 0:
		l.PhysicalLocation = p.at(source.Span{File: j.Design.Files[0]})
	}
	return l
}

func snippetOf(s source.Span) *artifactContent {
	if s.End <= s.Start || s.End-s.Start > longestSnippet {
		return nil
	}
	return &artifactContent{Text: s.Text()}
}

// logicalOf names the part of the system. The kinds are the words of the
// dialect; the standard's own are about programs (3.33.7).
func logicalOf(s check.Subject) logicalLocation {
	l := logicalLocation{FullyQualifiedName: s.String(), Kind: "job"}
	if len(s.Path) > 0 {
		last := s.Path[len(s.Path)-1]
		l.Name, l.Kind = last.Name, last.Kind
	}
	return l
}

// baselineOf gives the standard's word for how an outcome stands to what was
// known before, "" where nothing was compared.
func baselineOf(s check.State) string {
	switch s {
	case check.New:
		return "new"
	case check.Unchanged:
		return "unchanged"
	case check.Changed:
		return "updated"
	case check.NotCompared:
	}
	return ""
}

// absentOf is a finding of before about which nothing is answered any more. It
// has no place in the design as it is now.
func absentOf(g *linter.Gone, j *linter.Judged, rules *rules, p *places) result {
	subject := strings.TrimPrefix(g.Identity, g.Check+": ")
	r := result{
		RuleID:              g.Check,
		RuleIndex:           rules.named(g.Check),
		Kind:                kindOf(check.Fail),
		Level:               cmp.Or(g.Severity, check.Warning).String(),
		Message:             message{Text: escaped("Found no more: " + g.Identity + ".")},
		Locations:           []location{{LogicalLocations: []logicalLocation{{FullyQualifiedName: subject}}}},
		PartialFingerprints: map[string]string{"outcomeIdentity/v1": fingerprint(g.Identity)},
		BaselineState:       "absent",
		Properties:          resultProperties{Subject: subject, Identity: g.Identity},
	}
	if o := g.Then; o != nil {
		r.Message.Text = escaped("Found no more: " + wording.Sentence(o.Message))
		r.Locations[0].LogicalLocations[0] = logicalOf(o.Subject)
		r.Properties.Subject, r.Properties.Key = o.Subject.String(), o.Key
	}
	if len(j.Design.Files) > 0 {
		r.Locations[0].PhysicalLocation = p.at(source.Span{File: j.Design.Files[0]})
	}
	if len(j.Design.Deviations) > 0 {
		r.Suppressions = &[]suppression{}
	}
	return r
}

// suppressionsOf says whether a finding was accepted. Where a design has
// deviations, each of its results says so, with an empty list when it was not;
// otherwise none does (3.27.23).
func suppressionsOf(o *check.Outcome, j *linter.Judged, p *places) *[]suppression {
	if j.Design == nil || len(j.Design.Deviations) == 0 {
		return nil
	}
	all := []suppression{}
	if a := o.Accepted; a != nil {
		one := suppression{Kind: "inSource", Status: "accepted", Justification: a.Reason, Properties: &suppressionProperties{AcceptedBy: a.By, Until: a.Until}}
		if !a.Place.IsZero() {
			one.Location = &location{PhysicalLocation: p.at(a.Place)}
		}
		all = append(all, one)
	}
	return &all
}

// fixesOf gives those remedies that can be written as edits. A list of fixes
// holds nothing twice.
func fixesOf(o *check.Outcome, p *places) []fix {
	var fixes []fix
	for i, r := range o.Remedies {
		same := func(other check.Remedy) bool { return other.Text == r.Text && slices.Equal(other.Edits, r.Edits) }
		unplaced := func(e check.Edit) bool { return e.Span.IsZero() }
		if len(r.Edits) == 0 || slices.ContainsFunc(r.Edits, unplaced) || slices.ContainsFunc(o.Remedies[:i], same) {
			continue
		}
		fixes = append(fixes, fix{Description: message{Text: escaped(wording.Sentence(r.Text))}, ArtifactChanges: changesOf(r.Edits, p)})
	}
	return fixes
}

// changesOf groups edits by file, in the order in which the files come first.
func changesOf(edits []check.Edit, p *places) []artifactChange {
	var changes []artifactChange
	at := map[string]int{}
	for _, e := range edits {
		name := e.Span.File.Name
		if _, ok := at[name]; !ok {
			at[name] = len(changes)
			changes = append(changes, artifactChange{ArtifactLocation: p.artifactLocation(e.Span.File)})
		}
		r := replacement{DeletedRegion: regionOf(e.Span)}
		if e.New != "" {
			r.InsertedContent = &artifactContent{Text: e.New}
		}
		c := &changes[at[name]]
		c.Replacements = append(c.Replacements, r)
	}
	return changes
}

func propertiesOf(o *check.Outcome, p *places) resultProperties {
	r := resultProperties{Subject: o.Subject.String(), Key: o.Key, Identity: o.Identity, Assumed: o.Assumed}
	for _, e := range o.Evidence {
		one := evidence{Name: e.Name, Value: e.Value, Number: jsonstream.Number(e.Number), Unit: e.Unit, Sum: e.Sum}
		for _, from := range e.From {
			if at := p.at(from.Span); at != nil {
				one.From = append(one.From, place{Note: from.Note, Location: *at})
			}
		}
		r.Evidence = append(r.Evidence, one)
	}
	if b := o.Limit; b != nil {
		r.Limit = &limit{Text: b.Text, Number: jsonstream.Number(b.Number), Unit: b.Unit, Relation: b.Relation(), Basis: b.Basis, Origin: p.at(b.Origin)}
	}
	r.SeverityOrigin = p.at(o.SeverityOrigin)
	for _, m := range o.Remedies {
		r.Remedies = append(r.Remedies, remedy{Text: m.Text, Certainty: m.Sure.String()})
	}
	for _, m := range o.Missing {
		r.Missing = append(r.Missing, missing{What: m.What, Part: m.Part, Write: m.Write, Location: p.at(m.Where)})
	}
	return r
}
