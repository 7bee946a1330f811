package schema

// Limits on what a design may hold. They keep a hostile or broken file from
// taking the machine; each is far above any real job.
const (
	// MaxFileBytes bounds one file.
	MaxFileBytes = 256 << 20
	// MaxTotalBytes bounds all files of one design.
	MaxTotalBytes = 1 << 30
	// MaxNesting bounds braces, brackets and parentheses inside each other. The
	// HCL parser recurses once per level, and a Go stack overflow cannot be
	// recovered from.
	MaxNesting = 64
	// MaxOperators bounds operators in one expression, for the same reason.
	MaxOperators = 200
	// MaxWordBytes bounds a word or a number that stands outside quotes.
	MaxWordBytes = 200
	// MaxDevices bounds how many devices a design may come to when its runs are
	// written out.
	MaxDevices = 4_000_000
	// MaxRun bounds one quantity.
	MaxRun = 2_000_000
	// MaxUnitRun bounds the channels, outputs, inputs or sends of one run.
	MaxUnitRun = 1024
	// MaxUnitParts bounds the channels, outputs, inputs and sends of a design when
	// their runs are written out.
	MaxUnitParts = 1_000_000
	// MaxNameBytes bounds a name; MaxTextBytes any other text.
	MaxNameBytes = 200
	MaxTextBytes = 2000
	// MaxTemplateParts bounds the pieces of one text made by a template.
	MaxTemplateParts = 64
	// MaxExpressionSteps bounds the figures, numbers and signs of one expression,
	// MaxCriterions the criterions of a design.
	MaxExpressionSteps = 100
	MaxCriterions      = 1000
	// MaxUseDepth bounds files that use files.
	MaxUseDepth = 8
	// MaxProblems bounds the problems kept of one file.
	MaxProblems = 1000
)
