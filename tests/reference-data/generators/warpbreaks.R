# warpbreaks.csv: R datasets::warpbreaks (Tippett 1950).
cat("# Tippett 1950, Technological Applications of Statistics; from R 4.2.2 datasets::warpbreaks (generators/warpbreaks.R)\n")
write.csv(warpbreaks, row.names = FALSE, quote = FALSE)
