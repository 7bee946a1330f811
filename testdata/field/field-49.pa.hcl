# A field report: the fire authority asks a night club for a written sequence of
# what happens to the music when the panel goes into alarm: off, and off until
# reset. There is a relay, and there is no text. The answer is no number but what
# has to be written down: the contact, what it silences, whether it holds, what
# brings the music back, and how it is tested. Names are invented.
system "Club at the Tannery" {
  reference = "CT-02"
  duty      = "music"
}
amplifier "Rack" {
  rated_power = "480 W"
  input "Booth" {
    takes  = "line"
    stereo = "summed inside"
  }
  input "Fire mute" {
    takes    = "contact"
    mutes    = ["Booth"]
    mutes_on = "open"
  }
}
line "Floor" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "15 m"
  loudspeaker "F" {
    quantity = 12
    tap      = "30 W"
    spacing  = "5 m"
    space    = "Floor"
  }
}
music "Booth" {
  into     = "Rack"
  input    = "Booth"
  channels = "stereo"
}
mute_link "Fire panel relay" { # expect mute-link open: What Fire panel relay does in alarm is not written down in full. && what the contact does in alarm && sources it silences && whether silence holds until reset && what brings the sound back && test of the link && trigger Fire panel relay && terminals Fire mute of Rack
  into  = "Rack"
  input = "Fire mute"
}
space "Floor" {
  length    = "20 m"
  width     = "14 m"
  height    = "4 m"
  listeners = "standing"
  noise     = "75 dBA"
}
