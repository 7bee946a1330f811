# A field report: in a school, left and right main outputs of the mixer had been
# joined pin to pin into the one feed of the theatre system, and the technician
# who found it asked whether that is safe. It is not: each output drives the low
# impedance of the other. Places, names and figures are invented.
system "Larkfield School, theatre" {
  reference = "LF-02"
  duty      = "announcements and music"
}
mixer "Stage desk" {
  routing = "one programme, all lines"
  output "Main left" { balanced = true }
  output "Main right" { balanced = true }
  input "Ch 1" {
    takes    = "microphone"
    balanced = true
    triggers = []
  }
  input "Stereo" {
    takes  = "line"
    stereo = "left and right kept"
  }
  send "Main left" {
    into      = "Theatre amp"
    input     = "Line in"
    lead      = "6 m"
    tied_with = ["Main right"] # expect mono-sum fail error: Main left and Main right of Stage desk are tied to one lead into Line in of Theatre amp: each drives the low impedance of the other && remedy (advice) Take one of them alone
  }
}
amplifier "Theatre amp" {
  rated_power = "240 W"
  input "Line in" {
    takes    = "line"
    balanced = true
    triggers = []
  }
}
line "Theatre" {
  amplifier = "Theatre amp"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "20 m"
  loudspeaker "T" {
    quantity = 8
    tap      = "20 W"
    spacing  = "6 m"
    space    = "Theatre"
  }
}
microphone "Lectern" {
  into     = "Stage desk"
  input    = "Ch 1"
  trigger  = "none"
  channels = "mono"
}
space "Theatre" {
  length = "22 m"
  width  = "14 m"
  height = "6 m"
  noise  = "45 dBA"
}
