package plan

// visitor is what is done with every key of a plan file in turn: read it, write
// it, check its value, or list it. The keys themselves are in schema.go, once.
type visitor interface {
	// number visits a number, count a whole number, flag a yes or no, and text
	// a text. A reader sets the value; the others only look at it.
	number(k key, x *float64, l limits)
	count(k key, n *int, l limits)
	flag(k key, b *bool)
	text(k key, s *string, w wording)

	// has reports whether to visit an optional key, present saying whether the
	// plan holds a value for it.
	has(k key, present bool) bool
	// enter begins an object. Where it reports false, there is none to visit
	// and leave must not be called.
	enter(k key) bool
	// enterList begins a list of n items and returns how many to visit. It
	// reports false as enter does.
	enterList(k key, n int, l limits) (int, bool)
	// leave ends the object or list entered last.
	leave()
}

// choice visits a text that is one of a few words.
func choice[S ~string](v visitor, k key, p *S, words []string) {
	s := string(*p)
	v.text(k, &s, wording{words: words})
	*p = S(s)
}

// group visits an object that a plan always holds, and reports whether there
// was one.
func group[T any](v visitor, k key, p *T, keys func(visitor, *T)) bool {
	if !v.enter(k) {
		return false
	}
	keys(v, p)
	v.leave()
	return true
}

// usualGroup visits an object that a plan always holds, and that a file leaves
// out while it is as usual.
func usualGroup[T comparable](v visitor, k key, p *T, usual T, keys func(visitor, *T)) {
	if v.has(k.brief(), *p != usual) {
		group(v, k, p, keys)
	}
}

// section visits an object that a plan may lack; fresh is what it holds before
// any of its keys is read.
func section[T any](v visitor, k key, p **T, fresh func() T, keys func(visitor, *T)) {
	if !v.has(k, *p != nil) || !v.enter(k) {
		return
	}
	if *p == nil {
		t := fresh()
		*p = &t
	}
	keys(v, *p)
	v.leave()
}

// optional visits a number that a plan may lack.
func optional(v visitor, k key, p **float64, l limits) {
	if !v.has(k, *p != nil) {
		return
	}
	if *p == nil {
		k.unset = true
		*p = new(float64)
	}
	v.number(k, *p, l)
}

// list visits a list of objects.
func list[T any](v visitor, k key, p *[]T, l limits, keys func(visitor, *T)) {
	visitItems(v, k, p, l, func(i int, t *T) { group(v, item(i), t, keys) })
}

// names visits a list of texts.
func names(v visitor, k key, p *[]string, l limits) {
	visitItems(v, k, p, l, func(i int, s *string) { v.text(item(i), s, wording{named: true}) })
}

func visitItems[T any](v visitor, k key, p *[]T, l limits, visit func(int, *T)) {
	n, ok := v.enterList(k, len(*p), l)
	if !ok {
		return
	}
	if n > len(*p) {
		*p = make([]T, n) // a reader's: the plan holds nothing yet
	}
	for i := range n {
		visit(i, &(*p)[i])
	}
	v.leave()
}
