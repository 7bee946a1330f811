package analysis

type builder struct{}
