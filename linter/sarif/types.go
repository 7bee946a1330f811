package sarif

import "loudlint/linter/internal/jsonstream"

// These are the objects of SARIF that are written, with the properties that are
// written. Their names are the standard's.

type toolComponent struct {
	Name           string                `json:"name"`
	Version        string                `json:"version,omitempty"`
	InformationURI string                `json:"informationUri,omitempty"`
	Language       string                `json:"language"`
	Notifications  []reportingDescriptor `json:"notifications,omitempty"`
	Rules          []reportingDescriptor `json:"rules"`
}

type tool struct {
	Driver toolComponent `json:"driver"`
}

type reportingDescriptor struct {
	ID                   string                  `json:"id"`
	ShortDescription     *message                `json:"shortDescription,omitempty"`
	FullDescription      *message                `json:"fullDescription,omitempty"`
	Help                 *message                `json:"help,omitempty"`
	DefaultConfiguration *reportingConfiguration `json:"defaultConfiguration,omitempty"`
	Properties           *ruleProperties         `json:"properties,omitempty"`
}

type reportingConfiguration struct {
	Enabled    *bool          `json:"enabled,omitempty"`
	Level      string         `json:"level,omitempty"`
	Parameters map[string]any `json:"parameters,omitempty"`
}

type ruleProperties struct {
	Asks       string      `json:"asks,omitempty"`
	Basis      string      `json:"basis,omitempty"`
	Blind      string      `json:"blind,omitempty"`
	Cautions   []string    `json:"cautions,omitempty"`
	Parameters []parameter `json:"parameters,omitempty"`
}

type parameter struct {
	Name        string             `json:"name"`
	Description string             `json:"description,omitempty"`
	Unit        string             `json:"unit,omitempty"`
	Default     any                `json:"default"` // jsonstream.Number or bool
	Low         *jsonstream.Number `json:"low,omitempty"`
	High        *jsonstream.Number `json:"high,omitempty"`
	Basis       string             `json:"basis,omitempty"`
}

// message is a message (3.11) or a multiformatMessageString (3.12).
type message struct {
	Text     string `json:"text"`
	Markdown string `json:"markdown,omitempty"`
}

type automationDetails struct {
	ID string `json:"id"`
}

type invocation struct {
	ExecutionSuccessful        bool                    `json:"executionSuccessful"`
	ExitCode                   *int                    `json:"exitCode,omitempty"`
	RuleConfigurationOverrides []configurationOverride `json:"ruleConfigurationOverrides,omitempty"`
	ToolExecutionNotifications []notification          `json:"toolExecutionNotifications,omitempty"`
}

type configurationOverride struct {
	Configuration reportingConfiguration       `json:"configuration"`
	Descriptor    reportingDescriptorReference `json:"descriptor"`
}

type reportingDescriptorReference struct {
	ID    string `json:"id"`
	Index *int   `json:"index,omitempty"`
}

type notification struct {
	Descriptor reportingDescriptorReference `json:"descriptor"`
	Level      string                       `json:"level"`
	Message    message                      `json:"message"`
	Locations  []location                   `json:"locations,omitempty"`
	Properties *notificationProperties      `json:"properties,omitempty"`
}

type notificationProperties struct {
	Found    string `json:"found"`
	Expected string `json:"expected,omitempty"`
	Nearest  string `json:"nearest,omitempty"`
}

type artifact struct {
	Description *message          `json:"description,omitempty"`
	Location    artifactLocation  `json:"location"`
	Length      int               `json:"length"`
	Roles       []string          `json:"roles"`
	Hashes      map[string]string `json:"hashes"`
	Contents    *artifactContent  `json:"contents,omitempty"`
}

type artifactContent struct {
	Text string `json:"text"`
}

type artifactLocation struct {
	URI         string   `json:"uri,omitempty"`
	URIBaseID   string   `json:"uriBaseId,omitempty"`
	Index       *int     `json:"index,omitempty"`
	Description *message `json:"description,omitempty"`
}

type result struct {
	RuleID              string            `json:"ruleId"`
	RuleIndex           *int              `json:"ruleIndex,omitempty"`
	Kind                string            `json:"kind"`
	Level               string            `json:"level"`
	Message             message           `json:"message"`
	Locations           []location        `json:"locations,omitempty"`
	RelatedLocations    []location        `json:"relatedLocations,omitempty"`
	PartialFingerprints map[string]string `json:"partialFingerprints"`
	BaselineState       string            `json:"baselineState,omitempty"`
	Suppressions        *[]suppression    `json:"suppressions,omitempty"`
	Fixes               []fix             `json:"fixes,omitempty"`
	Properties          resultProperties  `json:"properties"`
}

type suppression struct {
	Kind          string                 `json:"kind"`
	Status        string                 `json:"status"`
	Justification string                 `json:"justification"`
	Location      *location              `json:"location,omitempty"`
	Properties    *suppressionProperties `json:"properties,omitempty"`
}

type suppressionProperties struct {
	AcceptedBy string `json:"acceptedBy"`
	Until      string `json:"until,omitempty"`
}

type location struct {
	ID               int               `json:"id,omitempty"`
	PhysicalLocation *physicalLocation `json:"physicalLocation,omitempty"`
	LogicalLocations []logicalLocation `json:"logicalLocations,omitempty"`
	Message          *message          `json:"message,omitempty"`
}

type physicalLocation struct {
	ArtifactLocation artifactLocation `json:"artifactLocation"`
	Region           *region          `json:"region,omitempty"`
}

type region struct {
	StartLine   int              `json:"startLine"`
	StartColumn int              `json:"startColumn"`
	EndLine     int              `json:"endLine,omitempty"` // left out when it is StartLine
	EndColumn   int              `json:"endColumn"`
	Snippet     *artifactContent `json:"snippet,omitempty"`
}

type logicalLocation struct {
	Name               string `json:"name,omitempty"`
	FullyQualifiedName string `json:"fullyQualifiedName"`
	Kind               string `json:"kind,omitempty"`
}

type fix struct {
	Description     message          `json:"description"`
	ArtifactChanges []artifactChange `json:"artifactChanges"`
}

type artifactChange struct {
	ArtifactLocation artifactLocation `json:"artifactLocation"`
	Replacements     []replacement    `json:"replacements"`
}

type replacement struct {
	DeletedRegion   region           `json:"deletedRegion"`
	InsertedContent *artifactContent `json:"insertedContent,omitempty"`
}

type resultProperties struct {
	Subject  string     `json:"subject"`
	Key      string     `json:"key,omitempty"`
	Identity string     `json:"identity"`
	Evidence []evidence `json:"evidence,omitempty"`
	Limit    *limit     `json:"limit,omitempty"`
	// SeverityOrigin is where criteria set the level.
	SeverityOrigin *physicalLocation `json:"severityOrigin,omitempty"`
	Remedies       []remedy          `json:"remedies,omitempty"`
	Missing        []missing         `json:"missing,omitempty"`
	Assumed        []string          `json:"assumed,omitempty"`
}

type evidence struct {
	Name   string            `json:"name"`
	Value  string            `json:"value"`
	Number jsonstream.Number `json:"number,omitzero"`
	Unit   string            `json:"unit,omitempty"`
	Sum    string            `json:"sum,omitempty"`
	From   []place           `json:"from,omitempty"`
}

type place struct {
	Note     string           `json:"note,omitempty"`
	Location physicalLocation `json:"location"`
}

type limit struct {
	Text     string            `json:"text"`
	Number   jsonstream.Number `json:"number,omitzero"`
	Unit     string            `json:"unit,omitempty"`
	Relation string            `json:"relation"`
	Basis    string            `json:"basis,omitempty"`
	Origin   *physicalLocation `json:"origin,omitempty"`
}

type remedy struct {
	Text      string `json:"text"`
	Certainty string `json:"certainty,omitempty"`
}

type missing struct {
	What     string            `json:"what"`
	Part     string            `json:"part,omitempty"`
	Write    string            `json:"write,omitempty"`
	Location *physicalLocation `json:"location,omitempty"`
}
