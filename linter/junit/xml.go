package junit

import (
	"encoding/xml"
	"strings"

	"loudlint/linter/textout"
)

// Elements are written as they come, so that a result of any size needs the memory
// of one design.

// attribute is one of an element.
type attribute struct{ name, value string }

func (s *Suites) put(text string) { _, _ = s.w.WriteString(text) }

// escape writes a text so that it is read back as it is shown.
func (s *Suites) escape(text string) { _ = xml.EscapeText(s.w, []byte(textout.Printable(text))) }

func (s *Suites) tag(depth int, name string, all []attribute) {
	s.put(strings.Repeat("  ", depth) + "<" + name)
	for _, a := range all {
		s.put(" " + a.name + `="`)
		s.escape(a.value)
		s.put(`"`)
	}
}

func (s *Suites) open(depth int, name string, all ...attribute) {
	s.tag(depth, name, all)
	s.put(">\n")
}

func (s *Suites) close(depth int, name string) {
	s.put(strings.Repeat("  ", depth) + "</" + name + ">\n")
}

func (s *Suites) empty(depth int, name string, all ...attribute) {
	s.tag(depth, name, all)
	s.put("/>\n")
}

// text writes an element that holds lines of text and nothing else.
func (s *Suites) text(depth int, name string, lines []string, all ...attribute) {
	if len(lines) == 0 {
		s.empty(depth, name, all...)
		return
	}
	s.tag(depth, name, all)
	s.put(">")
	for i, line := range lines {
		if i > 0 {
			s.put("\n")
		}
		s.escape(line)
	}
	s.put("</" + name + ">\n")
}
