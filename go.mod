module loudlint

go 1.26.0

// In the command.
require (
	// Where characters as a reader sees them end: columns and widths. The HCL library brings it.
	github.com/apparentlymart/go-textseg/v15 v15.0.0
	// Colours on every terminal, Windows too.
	github.com/fatih/color v1.19.0
	// The syntax of designs: parser, expressions, templates. Types of both stop at schema.
	github.com/hashicorp/hcl/v2 v2.25.0
	// Spreadsheets, written and read.
	github.com/xuri/excelize/v2 v2.11.1
	github.com/zclconf/go-cty v1.20.0
	// Widths of letters, so that no label of a picture lies on another.
	golang.org/x/image v0.44.0
	// Whether standard output is a terminal, and how wide.
	golang.org/x/term v0.47.0
	// Characters that are two columns wide.
	golang.org/x/text v0.43.0
	// Axes, ticks and scales of charts.
	gonum.org/v1/plot v0.17.0
)

// In tests only.
require (
	// Differences that can be read.
	github.com/google/go-cmp v0.7.0
	// Scripts that call the command as a process.
	github.com/rogpeppe/go-internal v1.16.0
	// SARIF against its published schema.
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.3
	// Markdown as those read it to whom reviews go.
	github.com/yuin/goldmark v1.8.7
	// HTML as browsers read it.
	golang.org/x/net v0.62.0
)

require (
	codeberg.org/go-fonts/liberation v0.5.0 // indirect
	codeberg.org/go-latex/latex v0.2.0 // indirect
	codeberg.org/go-pdf/fpdf v0.11.1 // indirect
	git.sr.ht/~sbinet/gg v0.7.0 // indirect
	github.com/agext/levenshtein v1.2.1 // indirect
	github.com/ajstarks/svgo v0.0.0-20211024235047-1546f124cd8b // indirect
	github.com/apparentlymart/go-textseg/v17 v17.0.1 // indirect
	github.com/golang/freetype v0.0.0-20170609003504-e2365dfdc4a0 // indirect
	github.com/mattn/go-colorable v0.1.14 // indirect
	github.com/mattn/go-isatty v0.0.20 // indirect
	github.com/mitchellh/go-wordwrap v1.0.1 // indirect
	github.com/richardlehane/mscfb v1.0.9 // indirect
	github.com/richardlehane/msoleps v1.0.6 // indirect
	github.com/tiendc/go-deepcopy v1.7.2 // indirect
	github.com/xuri/efp v0.0.3-0.20260924042702-217b81952dec // indirect
	github.com/xuri/nfp v0.0.2-0.20250530014748-2ddeb826f9a9 // indirect
	golang.org/x/crypto v0.58.0 // indirect
	golang.org/x/mod v0.41.0 // indirect
	golang.org/x/sync v0.24.0 // indirect
	golang.org/x/sys v0.49.0 // indirect
	golang.org/x/tools v0.51.0 // indirect
)
