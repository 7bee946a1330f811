// Package drawing makes pictures of a judged design: the single-line diagram of
// the whole system, charts of loads, levels and impedances, and maps of what is
// heard.
//
// It owns how a picture is laid out and what it is made of: marks, symbols,
// lettering, and the rule that no label lies on another. It is a function of the
// result: it computes places on paper and no figure of the trade. The command and
// linter/report import it; it imports linter and what that gives out.
//
// Pictures are SVG, with text as text and a title and description for those who
// cannot see them. They follow the reader's light or dark setting, and nothing in
// them is told by colour alone. The same result gives the same bytes.
package drawing
