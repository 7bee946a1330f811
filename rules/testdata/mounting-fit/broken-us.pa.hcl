# The same in feet.
system "Store" { units = "US" }
space "Store" { height = "20 ft" }
line "A" {
  output = "70 V"
  loudspeaker "S" {
    kind   = "ceiling"
    tap    = "6 W"
    space  = "Store"
    height = "12 ft" # expect fail note: hangs at 12 ft in "Store", which is 20 ft high
  }
}
