package words_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
)

// source parses every Go file of the project that is not a test.
func source(t *testing.T) (*token.FileSet, []*ast.File) {
	t.Helper()
	set := token.NewFileSet()
	var files []*ast.File
	require.NoError(t, filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		f, err := parser.ParseFile(set, path, nil, parser.SkipObjectResolution)
		files = append(files, f)
		return err
	}))
	require.NotEmpty(t, files)
	return set, files
}

// literal returns the value of a string literal.
func literal(e ast.Expr) (string, bool) {
	lit, ok := e.(*ast.BasicLit)
	if !ok || lit.Kind != token.STRING {
		return "", false
	}
	s, err := strconv.Unquote(lit.Value)
	return s, err == nil
}

// TestEveryTextIsUsed: the code names each key in full, or by a beginning that
// ends in a full stop and to which it adds the rest.
func TestEveryTextIsUsed(t *testing.T) {
	named := map[string]bool{}
	_, files := source(t)
	for _, f := range files {
		ast.Inspect(f, func(n ast.Node) bool {
			if e, ok := n.(ast.Expr); ok {
				if s, ok := literal(e); ok {
					named[s] = true
				}
			}
			return true
		})
	}
	for _, key := range words.English().Keys() {
		used := named[key]
		for i, r := range key {
			used = used || r == '.' && named[key[:i+1]]
		}
		assert.True(t, used, "nothing says %q", key)
	}
}

// TestEveryTextAskedForIsThere looks at the calls that name their key in full:
// the catalogue has it, and the call fills each of its gaps.
func TestEveryTextAskedForIsThere(t *testing.T) {
	c := words.English()
	set, files := source(t)
	seen := 0
	for _, f := range files {
		ast.Inspect(f, func(n ast.Node) bool {
			key, args, ok := textCall(n)
			if !ok || !strings.Contains(key, ".") {
				return true
			}
			seen++
			where := set.Position(n.Pos()).String()
			assert.True(t, c.Has(key), "%s: %s", where, key)
			if filled, known := names(args); known {
				for _, m := range gap.FindAllStringSubmatch(c.Text(key), -1) {
					assert.Contains(t, filled, m[1], "%s: %s", where, key)
				}
			}
			return true
		})
	}
	assert.NotZero(t, seen, "calls were found")
}

// textCall takes apart a call of a method named Text whose first argument is a
// string literal.
func textCall(n ast.Node) (key string, args []ast.Expr, ok bool) {
	call, ok := n.(*ast.CallExpr)
	if !ok || len(call.Args) == 0 {
		return "", nil, false
	}
	if method, isMethod := call.Fun.(*ast.SelectorExpr); !isMethod || method.Sel.Name != "Text" {
		return "", nil, false
	}
	key, ok = literal(call.Args[0])
	return key, call.Args[1:], ok
}

// names returns the names of the arguments of a call, and false when they are
// not listed at the call itself.
func names(args []ast.Expr) (map[string]bool, bool) {
	out := map[string]bool{}
	if len(args) == 0 {
		return out, true
	}
	list, ok := args[0].(*ast.CompositeLit)
	if !ok {
		return nil, false
	}
	for _, e := range list.Elts {
		pair, isPair := e.(*ast.KeyValueExpr)
		if !isPair {
			return nil, false
		}
		if name, ok := literal(pair.Key); ok {
			out[name] = true
		}
	}
	return out, true
}
