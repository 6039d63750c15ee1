# immer.csv: barley yields of Immer, Hayes and Powers 1934, from R 4.2.2 MASS::immer, mean of the two years.
# Tukey's one degree of freedom from the regression on the square of the fitted values, printed as the second line.
d <- MASS::immer
d$y <- (d$Y1 + d$Y2) / 2
add <- lm(y ~ Loc + Var, d)
d$f <- fitted(add)^2
a <- anova(add, lm(y ~ Loc + Var + f, d))
cat("# Immer, Hayes and Powers 1934; R 4.2.2 MASS::immer, mean of two years (generators/immer.R)\n")
cat(sprintf("# non-additivity SS %.15g F %.15g df %d p %.15g\n", a[2, "Sum of Sq"], a[2, "F"], a[2, "Res.Df"], a[2, "Pr(>F)"]))
write.csv(data.frame(block = as.integer(d$Loc) - 1, treatment = as.integer(d$Var) - 1, y = d$y), row.names = FALSE, quote = FALSE)
