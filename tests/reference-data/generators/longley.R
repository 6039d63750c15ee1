# longley.csv: R datasets::longley (J. W. Longley 1967, JASA 62:819).
# The first line of the file names the source; NIST's own y is Employed in thousands, hence the factor 1000.
d <- longley
out <- data.frame(y = round(d$Employed * 1000), x1 = d$GNP.deflator, x2 = round(d$GNP * 1000),
  x3 = round(d$Unemployed * 10), x4 = round(d$Armed.Forces * 10), x5 = round(d$Population * 1000), x6 = d$Year)
cat("# Longley 1967, JASA 62:819; from R 4.2.2 datasets::longley in NIST's units (generators/longley.R)\n")
write.csv(out, row.names = FALSE, quote = FALSE)
