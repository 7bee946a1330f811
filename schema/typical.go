package schema

// useTypical reads those typical catalogues that the design names.
func (r *resolver) useTypical() {}
