# A relay that takes the mains from the mixer, on which the level counts.
mixer "Desk" {
  input "Mic" { takes = "microphone" }
  send "Main" {
    into  = "Amp"
    input = "Line in"
  }
}
amplifier "Amp" {
  input "Line in" { takes = "line" }
}
line "Nave" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "N" {
    tap   = "6 W"
    space = "Nave"
  }
}
microphone "Choir" {
  into  = "Desk"
  input = "Mic"
}
mute_link "Fire panel" {
  into        = "Desk"
  contact     = "opens in alarm"
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  joint       = "contactor in the mains of the mixer" # expect fail error: Fire panel acts on the supply (contactor in the mains of the mixer): cutting mains silences announcements too && 95 dBA + 15 dB = 110 dBA && 70 dBA + 15 dB = 85 dBA && Silence the audio before the amplifier instead
  tested      = "with the panel, at handover"
}
space "Nave" {
  noise             = "70 dBA"
  programme         = "95 dBA" # expect pass: The level in Nave counts on Fire panel, which silences the programme. && 95 dBA + 15 dB = 110 dBA
  muted_by          = "Fire panel"
  wanted_over_noise = "15 dB"
}
