package check

import (
	"fmt"
	"strings"

	"stopwright/assets/words"
)

// Page describes every check for a reader, as a page in Markdown written from
// the checks themselves and the words of a catalogue: what each is called, how
// grave it is, why it matters, and what to do about it.
func Page(c *words.Catalogue) string {
	t := c.Text
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\n%s\n", t("checkpage.title"), t("checkpage.intro"))
	for _, k := range All {
		fmt.Fprintf(&b, "\n## %s\n\n%s\n\n%s\n", t("check."+k.ID+".title"), t("checkpage."+string(k.Severity)), t("check."+k.ID+".why"))
		todo := t("checkpage.todo", words.Args{"Text": t("remedy." + k.ID)})
		if k.fix != nil {
			todo += " " + t("checkpage.mends")
		}
		fmt.Fprintf(&b, "\n%s\n\n%s\n", todo, t("checkpage.id", words.Args{"ID": "`" + k.ID + "`"}))
	}
	return b.String()
}
