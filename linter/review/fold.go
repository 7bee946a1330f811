package review

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"loudlint/linter"
	"loudlint/linter/check"
	"loudlint/schema/wording"
)

// fold sorts answers into the rows of their checks; those that are equal in all
// but the names of their parts become one group.
func fold(outcomes []check.Outcome, rows map[*check.Check]*Row) {
	type key struct {
		row   *Row
		alike string
	}
	at := map[key]int{}
	for i := range outcomes {
		o := &outcomes[i]
		row := rows[o.Check]
		list := row.listFor(o)
		k := key{row, alike(o)}
		n, met := at[k]
		if !met {
			at[k] = len(*list)
			*list = append(*list, Group{o})
			continue
		}
		(*list)[n] = append((*list)[n], o)
	}
}

func (row *Row) listFor(o *check.Outcome) *[]Group {
	switch {
	case o.Verdict == check.Open:
		return &row.Open
	case o.Verdict == check.Pass:
		return &row.Met
	case o.Accepted != nil:
		return &row.Agreed
	}
	return &row.NotMet
}

// alike writes an answer without the names of its part: two that come to the same
// text say the same of two parts.
func alike(o *check.Outcome) string {
	renames := make([]linter.Rename, len(o.Subject.Path))
	for i, step := range o.Subject.Path {
		renames[i] = linter.Rename{Is: step.Name, Was: "\x00" + strconv.Itoa(i)}
	}
	texts := []string{strconv.Itoa(int(o.Verdict)), o.Severity.String(), o.Message}
	for _, step := range o.Subject.Path {
		texts = append(texts, step.Kind)
	}
	for i := range o.Evidence {
		texts = append(texts, o.Evidence[i].Name, o.Evidence[i].Value, o.Evidence[i].Sum)
	}
	if o.Limit != nil {
		texts = append(texts, o.Limit.Text, o.Limit.Basis)
	}
	for i := range o.Remedies {
		texts = append(texts, o.Remedies[i].Text)
	}
	for _, m := range o.Missing {
		texts = append(texts, m.What, m.Write)
	}
	if a := o.Accepted; a != nil {
		texts = append(texts, a.By, a.Reason, a.Until, a.Place.File.Name, strconv.Itoa(int(a.Place.Start)))
	}
	return linter.Renamed(strings.Join(texts, "\x01"), renames)
}

// Parts names the parts of answers: those of one line or unit together, and those
// that several lines or units have alike. So many names of each are written out,
// the rest is counted; 0 writes all.
func Parts(group Group, most int) []string {
	paths := make([][]check.Step, len(group))
	for i, o := range group {
		paths[i] = o.Subject.Path
	}
	return partsAt(paths, most)
}

// siblings are parts of one kind inside the same outer parts.
type siblings struct {
	kind   string
	names  []string
	outers [][]check.Step // each of them has parts of these names
}

// partsAt calls itself once for each step of the longest path, of which no part
// has more than a few.
func partsAt(paths [][]check.Step, most int) []string {
	var texts []string
	for _, s := range alikeInside(paths) {
		text := named(strings.ReplaceAll(s.kind, "_", " "), s.names, most)
		switch outer := (check.Subject{Path: s.outers[0]}); {
		case len(s.outers) > 1:
			text += " of " + strings.Join(partsAt(s.outers, most), "; ")
		case len(outer.Path) == 0:
		case len(s.names) == 1:
			text = outer.String() + ", " + text
		default:
			text = outer.String() + ": " + text
		}
		texts = append(texts, text)
	}
	return texts
}

// alikeInside puts parts of one kind in one outer part together, and then outer
// parts in which they have the same names.
func alikeInside(paths [][]check.Step) []*siblings {
	var inside, alike []*siblings
	at := map[string]*siblings{}
	for _, path := range paths {
		s := &siblings{kind: "the job", outers: [][]check.Step{nil}}
		name := ""
		if last := len(path) - 1; last >= 0 {
			s.kind, name = path[last].Kind, path[last].Name
			s.outers[0] = path[:last]
		}
		key := s.kind + "\x00" + check.Subject{Path: s.outers[0]}.String()
		if at[key] == nil {
			at[key] = s
			inside = append(inside, s)
		}
		if s = at[key]; !slices.Contains(s.names, name) {
			s.names = append(s.names, name)
		}
	}
	for _, s := range inside {
		key := s.kind + "\x00\x00" + strings.Join(s.names, "\x00")
		if first := at[key]; first != nil && len(s.outers[0]) > 0 && len(first.outers[0]) > 0 {
			first.outers = append(first.outers, s.outers[0])
			continue
		}
		at[key] = s
		alike = append(alike, s)
	}
	return alike
}

// named names one part, or several of a kind: 3 lines: "A", "B" and "C".
func named(kind string, names []string, most int) string {
	if len(names) < 2 {
		return check.Step{Kind: kind, Name: strings.Join(names, "")}.String()
	}
	quoted := make([]string, len(names))
	for i, name := range names {
		quoted[i] = `"` + name + `"`
	}
	text := wording.Counted(len(names), kind) + " "
	if most > 0 && len(names) > most {
		return text + strings.Join(quoted[:most], ", ") + " and " + strconv.Itoa(len(names)-most) + " more"
	}
	return text + wording.Listed(quoted, "and")
}

// ranges gives what figures of answers come to, from the least to the most, and
// the limit where they share one. Figures in words are left out where they
// differ.
func ranges(groups []Group) (figures []string, limit string) {
	type span struct {
		name        string
		least, most check.Evidence
		words       bool
	}
	var all []*span
	at := map[string]*span{}
	first := true
	for _, g := range groups {
		o := g[0] // the others say the same
		text := ""
		if o.Limit != nil {
			text = o.Limit.Text
		}
		if first {
			limit = text
		} else if text != limit {
			limit = ""
		}
		first = false
		for _, e := range o.Evidence {
			s := at[e.Name]
			if s == nil {
				s = &span{name: e.Name, least: e, most: e}
				at[e.Name] = s
				all = append(all, s)
			}
			switch {
			case e.Value == s.least.Value || e.Value == s.most.Value:
			case math.IsNaN(e.Number) || math.IsNaN(s.least.Number) || e.Unit != s.least.Unit:
				s.words = true
			case e.Number < s.least.Number:
				s.least = e
			case e.Number > s.most.Number:
				s.most = e
			}
		}
	}
	for _, s := range all {
		text := strings.TrimPrefix(s.name+": "+s.least.Value, ": ")
		if s.most.Value != s.least.Value {
			text += " to " + s.most.Value
		}
		if !s.words {
			figures = append(figures, text)
		}
	}
	return figures, limit
}

// MetBy says by what figures the parts of a row meet it, a text for each group of
// parts with the same figures, arithmetic included; where there are more than so
// many groups, and not each is wanted, one text for all, with what their figures
// go from and to. So many names of equal parts are written out, when each is
// wanted all.
func MetBy(row *Row, each bool, mostGroups, mostNames int) []string {
	if !each && len(row.Met) > mostGroups {
		figures, limit := ranges(row.Met)
		return []string{sentence(Parts(slices.Concat(row.Met...), mostNames), figures, limit)}
	}
	if each {
		mostNames = 0
	}
	texts := make([]string, len(row.Met))
	for i, g := range row.Met {
		o := g[0] // the others say the same
		var figures []string
		for k := range o.Evidence {
			e := &o.Evidence[k]
			figure := e.Value
			if e.Sum != "" {
				figure = e.Sum
			}
			figures = append(figures, strings.TrimPrefix(e.Name+": "+figure, ": "))
		}
		if len(figures) == 0 {
			figures = append(figures, strings.TrimSuffix(o.Message, "."))
		}
		limit := ""
		if o.Limit != nil {
			limit = o.Limit.Text
		}
		texts[i] = sentence(Parts(g, mostNames), figures, limit)
	}
	return texts
}

func sentence(parts, figures []string, limit string) string {
	if limit != "" {
		figures = append(figures, limit)
	}
	return strings.TrimSuffix(strings.Join(parts, "; ")+": "+strings.Join(figures, "; "), ": ")
}
