# A field report: a bar has one microphone line to its mixer, and visitors bring
# tablets and laptops with a stereo headphone socket. The installer knew that left
# and right must not be tied and found nothing ready made: what is missing from
# the list of parts is a thing that sums them. Places and figures are invented.
system "Bar at the Old Weir" {
  reference = "OW-01"
  duty      = "music"
}
amplifier "Bar mixer" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Wall plate" { # the existing line, made for a microphone
    takes      = "microphone"
    balanced   = true
    connectors = ["XLR 3"]
    triggers   = []
  }
  input "Tuner" {
    takes    = "line"
    stereo   = "summed inside"
    triggers = []
  }
}
line "Bar" {
  amplifier = "Bar mixer"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "12 m"
  loudspeaker "B" {
    quantity = 10
    tap      = "6 W"
    spacing  = "4 m"
    space    = "Bar"
  }
}
music "Visitors' players" {
  into     = "Bar mixer"
  input    = "Wall plate" # expect mono-sum fail warning: Visitors' players brings two channels and Wall plate of Bar mixer takes one: nothing is named that sums left and right && Order a summing lead or box: a resistor in each leg # expect input-fit fail warning: Visitors' players gives line level, and Wall plate of Bar mixer is set for a microphone
  channels = "stereo"
  lead     = "15 m"
}
music "Tuner" { # expect mono-sum pass: Tuner of Bar mixer sums left and right
  into     = "Bar mixer"
  input    = "Tuner"
  channels = "stereo"
}
space "Bar" {
  length = "14 m"
  width  = "8 m"
  height = "3 m"
  noise  = "68 dBA"
}
