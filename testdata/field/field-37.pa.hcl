# A field report: a moulded lead with a stereo plug at the tablet and a mono plug
# at the mixer, tip and ring joined, had worked with other players. With this one
# it popped and distorted in front of an audience: the headphone output ran into
# its current limit. It is the same as a bare Y-lead. Names and figures are
# invented.
system "Chapel Row Community Hall" {
  reference = "CR-05"
  duty      = "announcements and music"
}
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Mic" {
    takes      = "microphone"
    balanced   = true
    triggers   = ["signal"]
    mutes      = ["Line"]
    mute_depth = "-20 dB"
  }
  input "Line" {
    takes      = "line"
    connectors = ["6.35 mm jack 2-pole"]
    triggers   = []
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "15 m"
  loudspeaker "H" {
    quantity = 6
    tap      = "10 W"
    spacing  = "6 m"
    space    = "Hall"
  }
}
microphone "Stage" { # expect priority-wired pass: Stage silences Backing tracks
  into    = "Rack"
  input   = "Mic"
  trigger = "signal"
}
music "Backing tracks" {
  into      = "Rack"
  input     = "Line"
  channels  = "stereo"
  impedance = "32 ohm"
  summed_by = "Y-lead" # expect mono-sum fail error: Backing tracks goes to Line of Rack by a bare Y-lead, left and right wired together: each output drives the other && 16 ohm && Replace the Y-lead
}
space "Hall" {
  length = "16 m"
  width  = "9 m"
  height = "4 m"
  noise  = "50 dBA"
}
