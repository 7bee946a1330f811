# A field report: one buried 1 inch conduit was to carry a 120 V circuit of 20 A, three
# conductors of 12 AWG, and the loudspeaker cable, whose type nobody had chosen. Two
# bidders told the customer that thicker insulation makes it acceptable. It does not:
# a circuit of limited energy has to have a conduit of its own, besides the noise.
# Names and figures are invented.
system "Garden pavilion" {
  duty         = "music"
  mains        = "120 V"
  wiring_rules = "US"
  units        = "US"
}
amplifier "House" { # expect wire-class pass: 70 V is Class 3
  rated_power  = "100 W"
  wiring_class = "Class 3"
}
line "First bid" {
  amplifier   = "House"
  output      = "70 V"
  containment = "1 in conduit, buried"
  shared_with = ["mains"] # expect route-separation fail error: shares its containment with mains, which US rules do not permit without a barrier (NEC 725.136) && remedy (proved) Give the line a way of its own, away from mains
  loudspeaker "P" { tap = "20 W" }
}
line "Second bid" {
  amplifier   = "House"
  output      = "70 V"
  containment = "1 in conduit, buried"
  shared_with = ["mains"] # expect route-separation fail error: under US rules thicker insulation is not enough to keep it apart
  separation  = "equal insulation"
  loudspeaker "Q" { tap = "20 W" }
}
