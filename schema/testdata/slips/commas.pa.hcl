line "North" {
  home_run = "40 m",
  cable    = "16/2", length = "60 m"
  loudspeaker "N" {
    tap = "6 W";
    leg = "3 m"; spacing = "5 m"
    quantity = 3
  },
}
