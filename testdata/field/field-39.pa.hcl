# A field report: at broadcast sites two 600 ohm outputs are twisted together
# again and again to make one channel. The pair is then a source of 300 ohm, a
# current circulates between them, and whoever else uses left and right gets them
# mixed. A combiner with resistors is what was wanted. Names are invented.
system "Hillcrest studio, reception" {
  reference = "HC-11"
  duty      = "music"
}
mixer "Studio desk" {
  routing = "one programme, all lines"
  output "Left" {
    level     = "4 dBu"
    impedance = "600 ohm"
    balanced  = true
  }
  output "Right" {
    level     = "4 dBu"
    impedance = "600 ohm"
    balanced  = true
  }
  input "Programme" {
    takes  = "line"
    stereo = "left and right kept"
  }
  send "Left" {
    into      = "Reception amp"
    input     = "Line in"
    tied_with = ["Right"] # expect mono-sum fail error: Left and Right of Studio desk are tied to one lead into Line in of Reception amp && together they are 300 ohm, and current circulates between them && 1 / (1 / 600 ohm + 1 / 600 ohm) = 300 ohm && a resistor in each leg
  }
}
amplifier "Reception amp" {
  rated_power = "60 W"
  input "Line in" {
    takes    = "line"
    balanced = true
  }
}
line "Reception" {
  amplifier = "Reception amp"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  loudspeaker "R" {
    quantity = 4
    tap      = "6 W"
    spacing  = "5 m"
    space    = "Reception"
  }
}
music "Programme" {
  into     = "Studio desk"
  input    = "Programme"
  channels = "stereo"
}
space "Reception" {
  length = "9 m"
  width  = "6 m"
  height = "2.8 m"
  noise  = "50 dBA"
}
