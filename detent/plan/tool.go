package plan

// NewTool returns a tool whose line passes through the pivot, with a fence on
// it: the values of the keys that a file's tool leaves out. Common practice, no
// source.
func NewTool() Tool {
	return Tool{
		Turning:        ToolTurns,
		Kerf:           3, // a common circular saw blade
		Reach:          0, // not given
		FenceLength:    400,
		FenceThickness: 18,
		FenceOpening:   0, // the tool cuts its own
		FenceScrew:     6,
		FenceInset:     30,
		FenceUnderside: nil, // clear of everything
	}
}
