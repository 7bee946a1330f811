// Package schematest owns made-up designs of any size, for tests and benchmarks
// only. It never reads anything and nothing that is shipped may import it.
package schematest
