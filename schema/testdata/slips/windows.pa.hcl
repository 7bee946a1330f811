# With a byte order mark and Windows line endings.
line "North" {
  home_run = 40 m
  cable = "16/2",
}
