package budget

import "math/bits"

// stream is a sequence of random 64-bit numbers: SplitMix64 (Steele, Lea and
// Flood, Fast splittable pseudorandom number generators, 2014). Its place is all
// its state, so that any block of a run can be drawn on its own.
type stream uint64

// golden is 2⁶⁴ divided by the golden ratio, odd.
const golden = 0x9e3779b97f4a7c15

// streamAt returns the stream for a block of a run. Two blocks begin at places
// that have been stirred, far apart on the whole length of 2⁶⁴.
func streamAt(seed uint64, block int) stream {
	s := stream(seed)
	start := s.next() + bits.Reverse64(uint64(block)*golden)
	s = stream(start)
	return stream(s.next())
}

func (s *stream) next() uint64 {
	*s += golden
	z := uint64(*s)
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// signed makes a number of all 53 binary digits evenly spread in [-1, 1).
func signed(bits uint64) float64 { return float64(int64(bits)>>11) * 0x1p-52 }

// unsigned makes a number evenly spread in [0, 1).
func unsigned(bits uint64) float64 { return float64(bits>>11) * 0x1p-53 }
