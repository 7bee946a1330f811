// Package markdown writes reviews as Markdown, to be pasted into a letter or a
// ticket.
//
// It owns what stands where and how texts of a design are made safe: none of them
// becomes a heading, a link, a table or HTML. It is a pure function of a review
// and never judges, computes or words a finding. The command and tests import it.
package markdown
