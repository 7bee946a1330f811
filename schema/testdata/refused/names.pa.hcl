# Names that nobody could use.
line "" {}
line " North " {}
line "South" {}
line "south" {}
line "So uth" {}
line "South" {}
line "Café" {}
line "Café" {}
line "A‮B" {}
line "A­B" {}
line "East\tWest" {}
line "0123456789012345678901234567890123456789012345678901234567890123456789012345678901234567890123456789012345678901234567890123456789012345678901234567890123456789012345678901234567890123456789012345678901234567890123456789" {}
line "One" "Two" {}
safety "Site" {}
line {}
group "South" { lines = ["South"] }
