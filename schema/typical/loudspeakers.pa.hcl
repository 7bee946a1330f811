# Loudspeakers typical of their class. All figures are invented; no entry is the
# product of a maker.
#
# A transformer that takes 6 W at 100 V takes 3 W at 70 V (70.7 V) from the same
# winding and 0.38 W at 25 V: both lists of an entry belong to the same windings.
# A winding that would take more than the rated power at 100 V stands in the list
# for 70 V only.

loudspeaker_model "typical/ceiling-3" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "ceiling"
  rated_power      = "3 W"
  taps_100V        = ["3 W", "1.5 W", "0.75 W"]
  taps_70V         = ["1.5 W", "0.75 W", "0.38 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "88 dB" # 1 W, 1 m
  coverage         = "150 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "150 Hz"
  exposure         = "IP21"
}

loudspeaker_model "typical/ceiling-6" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "ceiling"
  rated_power      = "6 W"
  taps_100V        = ["6 W", "3 W", "1.5 W", "0.75 W"]
  taps_70V         = ["3 W", "1.5 W", "0.75 W", "0.38 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "90 dB" # 1 W, 1 m
  coverage         = "130 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "120 Hz"
  exposure         = "IP21"
}

loudspeaker_model "typical/ceiling-10" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "ceiling"
  rated_power      = "10 W"
  taps_100V        = ["10 W", "5 W", "2.5 W", "1.25 W"]
  taps_70V         = ["10 W", "5 W", "2.5 W", "1.25 W", "0.62 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "90 dB" # 1 W, 1 m
  coverage         = "120 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "100 Hz"
  exposure         = "IP21"
}

loudspeaker_model "typical/ceiling-20" { # coaxial two-way, for music too
  note             = "invented figures, typical of the class; of no maker"
  kind             = "ceiling"
  rated_power      = "20 W"
  taps_100V        = ["20 W", "10 W", "5 W", "2.5 W"]
  taps_70V         = ["20 W", "10 W", "5 W", "2.5 W", "1.25 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "89 dB" # 1 W, 1 m
  coverage         = "110 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "70 Hz"
  exposure         = "IP33"
}

loudspeaker_model "typical/ceiling-6-emergency" { # metal back box and ceramic terminals; has no certificate, being invented
  note             = "invented figures, typical of the class; of no maker"
  kind             = "ceiling"
  rated_power      = "6 W"
  taps_100V        = ["6 W", "3 W", "1.5 W"]
  taps_70V         = ["3 W", "1.5 W", "0.75 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "92 dB" # 1 W, 1 m
  coverage         = "120 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "150 Hz"
  exposure         = "IP32"
}

loudspeaker_model "typical/ceiling-5-70v" { # 8 in cone, no taps marked for 100 V
  note             = "invented figures, typical of the class; of no maker"
  kind             = "ceiling"
  rated_power      = "8 W"
  taps_70V         = ["5 W", "2.5 W", "1.25 W", "0.62 W", "0.31 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "93 dB" # 1 W, 1 m
  coverage         = "100 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "80 Hz"
}

loudspeaker_model "typical/ceiling-4-25v" { # for 25 V and 70 V lines: the marking to use depends on the line
  note             = "invented figures, typical of the class; of no maker"
  kind             = "ceiling"
  rated_power      = "6 W"
  taps_70V         = ["4 W", "2 W", "1 W", "0.5 W"]
  taps_25V         = ["4 W", "2 W", "1 W", "0.5 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "92 dB" # 1 W, 1 m
  coverage         = "100 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "100 Hz"
}

loudspeaker_model "typical/wall-6" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "wall"
  rated_power      = "6 W"
  taps_100V        = ["6 W", "3 W", "1.5 W", "0.75 W"]
  taps_70V         = ["3 W", "1.5 W", "0.75 W", "0.38 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "91 dB" # 1 W, 1 m
  coverage         = "130 deg"
  coverage_at      = "1 kHz"
  lowest_frequency = "150 Hz"
  exposure         = "IP21"
}

loudspeaker_model "typical/wall-10" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "wall"
  rated_power      = "10 W"
  taps_100V        = ["10 W", "6 W", "3 W", "1.5 W"]
  taps_70V         = ["5 W", "3 W", "1.5 W", "0.75 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "91 dB" # 1 W, 1 m
  coverage         = "120 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "100 Hz"
  exposure         = "IP34"
}

loudspeaker_model "typical/wall-6-two-way" { # sounds to both sides of a corridor
  note             = "invented figures, typical of the class; of no maker"
  kind             = "wall"
  rated_power      = "6 W"
  taps_100V        = ["6 W", "3 W", "1.5 W"]
  taps_70V         = ["3 W", "1.5 W", "0.75 W"]
  sensitivity      = "90 dB" # 1 W, 1 m
  coverage         = "180 deg"
  coverage_at      = "1 kHz"
  lowest_frequency = "160 Hz"
  exposure         = "IP21"
}

loudspeaker_model "typical/wall-30" { # two-way, for music too
  note              = "invented figures, typical of the class; of no maker"
  kind              = "wall"
  rated_power       = "30 W"
  taps_100V         = ["30 W", "15 W", "7.5 W", "3.75 W"]
  taps_70V          = ["30 W", "15 W", "7.5 W", "3.75 W", "1.88 W"]
  impedance         = "8 ohm" # bypass terminals, transformer not in use
  sensitivity       = "89 dB" # 1 W, 1 m
  coverage          = "100 deg"
  coverage_vertical = "90 deg"
  coverage_at       = "2 kHz"
  lowest_frequency  = "70 Hz"
  exposure          = "IP44"
}

loudspeaker_model "typical/wall-60" { # two-way, for halls
  note              = "invented figures, typical of the class; of no maker"
  kind              = "wall"
  rated_power       = "60 W"
  taps_100V         = ["60 W", "30 W", "15 W", "7.5 W"]
  taps_70V          = ["60 W", "30 W", "15 W", "7.5 W", "3.75 W"]
  impedance         = "8 ohm" # bypass terminals, transformer not in use
  sensitivity       = "91 dB" # 1 W, 1 m
  coverage          = "90 deg"
  coverage_vertical = "70 deg"
  coverage_at       = "2 kHz"
  lowest_frequency  = "60 Hz"
  exposure          = "IP55"
}

loudspeaker_model "typical/wall-30-8ohm" { # no transformer: never on a 100 V line
  note             = "invented figures, typical of the class; of no maker"
  kind             = "wall"
  rated_power      = "30 W"
  impedance        = "8 ohm"
  sensitivity      = "88 dB" # 1 W, 1 m
  coverage         = "100 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "70 Hz"
}

loudspeaker_model "typical/wall-100-8ohm" { # no transformer: never on a 100 V line
  note              = "invented figures, typical of the class; of no maker"
  kind              = "wall"
  rated_power       = "100 W"
  impedance         = "8 ohm"
  sensitivity       = "93 dB" # 1 W, 1 m
  coverage          = "90 deg"
  coverage_vertical = "60 deg"
  coverage_at       = "2 kHz"
  lowest_frequency  = "55 Hz"
}

loudspeaker_model "typical/column-20" {
  note              = "invented figures, typical of the class; of no maker"
  kind              = "column"
  rated_power       = "20 W"
  taps_100V         = ["20 W", "10 W", "5 W", "2.5 W"]
  taps_70V          = ["10 W", "5 W", "2.5 W", "1.25 W"]
  sensitivity       = "93 dB" # 1 W, 1 m
  coverage          = "170 deg"
  coverage_vertical = "40 deg"
  coverage_at       = "2 kHz"
  lowest_frequency  = "150 Hz"
  exposure          = "IP44"
}

loudspeaker_model "typical/column-40" {
  note              = "invented figures, typical of the class; of no maker"
  kind              = "column"
  rated_power       = "40 W"
  taps_100V         = ["40 W", "20 W", "10 W", "5 W"]
  taps_70V          = ["20 W", "10 W", "5 W", "2.5 W"]
  sensitivity       = "96 dB" # 1 W, 1 m
  coverage          = "160 deg"
  coverage_vertical = "22 deg"
  coverage_at       = "2 kHz"
  lowest_frequency  = "130 Hz"
  exposure          = "IP55"
}

loudspeaker_model "typical/horn-10" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "horn"
  rated_power      = "10 W"
  taps_100V        = ["10 W", "5 W", "2.5 W", "1.25 W"]
  taps_70V         = ["10 W", "5 W", "2.5 W", "1.25 W", "0.62 W"]
  impedance        = "8 ohm"  # bypass terminals, transformer not in use
  sensitivity      = "103 dB" # 1 W, 1 m
  coverage         = "120 deg"
  coverage_at      = "1 kHz"
  lowest_frequency = "400 Hz"
  exposure         = "IP65"
}

loudspeaker_model "typical/horn-15" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "horn"
  rated_power      = "15 W"
  taps_100V        = ["15 W", "7.5 W", "5 W", "2.5 W"]
  taps_70V         = ["15 W", "7.5 W", "3.75 W", "2.5 W", "1.25 W"]
  impedance        = "8 ohm"  # bypass terminals, transformer not in use
  sensitivity      = "104 dB" # 1 W, 1 m
  coverage         = "90 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "350 Hz"
  exposure         = "IP66"
}

loudspeaker_model "typical/horn-30" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "horn"
  rated_power      = "30 W"
  taps_100V        = ["30 W", "15 W", "7.5 W", "3.75 W"]
  taps_70V         = ["30 W", "15 W", "7.5 W", "3.75 W", "1.88 W"]
  impedance        = "8 ohm"  # bypass terminals, transformer not in use
  sensitivity      = "106 dB" # 1 W, 1 m
  coverage         = "70 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "300 Hz"
  exposure         = "IP66"
}

loudspeaker_model "typical/horn-50" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "horn"
  rated_power      = "50 W"
  taps_100V        = ["50 W", "25 W", "12.5 W"]
  taps_70V         = ["50 W", "25 W", "12.5 W", "6.25 W"]
  impedance        = "16 ohm" # bypass terminals, transformer not in use
  sensitivity      = "108 dB" # 1 W, 1 m
  coverage         = "60 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "280 Hz"
  exposure         = "IP66"
}

loudspeaker_model "typical/pendant-10" { # small sphere on its cable
  note             = "invented figures, typical of the class; of no maker"
  kind             = "pendant"
  rated_power      = "10 W"
  taps_100V        = ["10 W", "5 W", "2.5 W", "1.25 W"]
  taps_70V         = ["5 W", "2.5 W", "1.25 W", "0.62 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "90 dB" # 1 W, 1 m
  coverage         = "170 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "120 Hz"
  exposure         = "IP20"
}

loudspeaker_model "typical/pendant-30" { # for high ceilings
  note             = "invented figures, typical of the class; of no maker"
  kind             = "pendant"
  rated_power      = "30 W"
  taps_100V        = ["30 W", "15 W", "7.5 W", "3.75 W"]
  taps_70V         = ["30 W", "15 W", "7.5 W", "3.75 W", "1.88 W"]
  impedance        = "8 ohm" # bypass terminals, transformer not in use
  sensitivity      = "92 dB" # 1 W, 1 m
  coverage         = "110 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "80 Hz"
  exposure         = "IP44"
}

loudspeaker_model "typical/garden-15" { # stands on the ground, sounds all round
  note              = "invented figures, typical of the class; of no maker"
  kind              = "garden"
  rated_power       = "15 W"
  taps_100V         = ["15 W", "7.5 W", "3.75 W"]
  taps_70V          = ["15 W", "7.5 W", "3.75 W", "1.88 W"]
  sensitivity       = "88 dB" # 1 W, 1 m
  coverage          = "360 deg"
  coverage_vertical = "90 deg"
  coverage_at       = "1 kHz"
  lowest_frequency  = "90 Hz"
  exposure          = "IP56"
}

loudspeaker_model "typical/garden-30" { # half buried, sounds all round
  note              = "invented figures, typical of the class; of no maker"
  kind              = "garden"
  rated_power       = "30 W"
  taps_100V         = ["30 W", "15 W", "7.5 W"]
  taps_70V          = ["30 W", "15 W", "7.5 W", "3.75 W"]
  impedance         = "8 ohm" # bypass terminals, transformer not in use
  sensitivity       = "90 dB" # 1 W, 1 m
  coverage          = "360 deg"
  coverage_vertical = "100 deg"
  coverage_at       = "1 kHz"
  lowest_frequency  = "60 Hz"
  exposure          = "IP66"
}
