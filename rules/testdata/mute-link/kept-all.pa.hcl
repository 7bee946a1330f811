# One that fails to the safe side, one that is watched, and terminals of an audio
# input that a contact triggers.
system "Hotel" { duty = "emergency, announcements and music" }
mixer "Matrix" {
  input "Music" { takes = "line" }
  input "Desk" { takes = "paging desk" }
  input "Urgent" {
    takes      = "line"
    triggers   = ["contact"]
    connectors = ["screw terminals"]
    mutes      = ["Music", "Desk"]
    mutes_on   = "open"
  }
  input "Mute 1" {
    takes    = "contact"
    mutes    = ["Music", "Desk"]
    mutes_on = "open"
  }
  input "Mute 2" {
    takes    = "contact"
    mutes    = ["Music"]
    mutes_on = "closed"
  }
  send "Main" {
    into  = "Amp"
    input = "Line in"
  }
}
amplifier "Amp" {
  input "Line in" { takes = "line" }
}
line "Floor" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "F" {
    tap   = "6 W"
    space = "Bar"
  }
}
music "Player" {
  into  = "Matrix"
  input = "Music"
}
microphone "Reception" {
  into  = "Matrix"
  input = "Desk"
}
message "General call" {
  into  = "Matrix"
  input = "Urgent"
}
mute_link "Fire panel" { # expect pass: Fire panel silences Player and Reception until reset, and so does a lost link. && trigger Fire panel && contact opens in alarm && terminals Mute 1 of Matrix && silenced Player, Reception && holds until reset yes && restored by panel reset && tested with the panel, 2026-04-02 && 95 dBA + 10 dB = 105 dBA
  into        = "Matrix"
  input       = "Mute 1"
  contact     = "opens in alarm"
  mutes       = ["Player", "Reception"]
  latching    = true
  restored_by = "panel reset"
  joint       = "fixed box, clamped"
  tested      = "with the panel, 2026-04-02"
}
mute_link "Second panel" { # expect pass: Second panel silences Player until reset, and the link is watched.
  into        = "Matrix"
  input       = "Mute 2"
  contact     = "closes in alarm"
  mutes       = ["Player"]
  latching    = true
  restored_by = "key switch"
  monitored   = true
  tested      = "with the panel, at handover"
}
mute_link "Third panel" { # expect pass: Third panel silences Player
  into        = "Matrix"
  input       = "Urgent"
  contact     = "opens in alarm"
  mutes       = ["Player"]
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
space "Bar" {
  noise             = "70 dBA"
  programme         = "95 dBA" # expect pass: The level in Bar counts on Fire panel
  muted_by          = "Fire panel"
  wanted_over_noise = "10 dB"
}
