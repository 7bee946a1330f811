# Nothing of this is a slip to the parser; the decoder says it.
Line "North" {
  Home_Run = "40 m"
  LoudSpeaker "N" {
    Tap = "6 W"
  }
}
microphone "Desk" {
  into  = "Rack"
  lines = ["North"]
}
Amplifier "Rack" {}
