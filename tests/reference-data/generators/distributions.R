# Tails and quantiles of the t, F, chi-square, normal and binomial distributions from R's stats package.
# Run in tests/reference-data/distributions: Rscript ../generators/distributions.R
line <- function(what) sprintf("# %s; %s, generators/distributions.R", what, R.version.string)
put <- function(frame, file, what) {
  out <- file(file, "w"); writeLines(line(what), out)
  for (name in names(frame)) frame[[name]] <- if (is.numeric(frame[[name]])) sprintf("%.17g", frame[[name]]) else frame[[name]]
  frame[] <- lapply(frame, function(x) sub("Inf", "Infinity", x))
  write.csv(frame, out, row.names = FALSE, quote = FALSE); close(out)
}
df <- c(0.5, 0.75, 1, 1.5, 2, 2.7, 3, 5, 10, 17.3, 30, 120, 1000, 1e4, 1e5, 2e5, 1e7, Inf)
g <- expand.grid(t = c(1e-9, 0.01, 0.3, 1, 1.7, 2.5, 5, 12, 35, 1e3, 1e8), df = df)
g$upper <- pt(g$t, g$df, lower.tail = FALSE); g <- g[g$upper > 1e-305, ]
put(g, "student-t-tails.csv", "pt(t, df, lower.tail = FALSE)")
g <- expand.grid(upper = c(0.45, 0.3, 0.2, 0.1, 0.05, 0.025, 0.005, 1e-6, 1e-12), df = df[df >= 1])
g$t <- qt(g$upper, g$df, lower.tail = FALSE)
# Below one degree of freedom qt itself stops at about 1e-10; the tests invert the tails there instead.
put(g, "student-t-quantiles.csv", "qt(upper, df, lower.tail = FALSE)")
g <- expand.grid(f = c(1e-6, 0.1, 0.7, 1, 2.17, 4, 14.4, 90, 1e4), df1 = c(1, 2, 3.5, 5, 12, 60), df2 = c(1, 2, 4.07, 8, 15, 65, 400, Inf))
g$upper <- pf(g$f, g$df1, g$df2, lower.tail = FALSE); g$lower <- pf(g$f, g$df1, g$df2); g <- g[g$upper > 1e-305, ]
put(g, "fisher-f-tails.csv", "pf(f, df1, df2)")
g <- expand.grid(upper = c(0.9, 0.5, 0.1, 0.05, 0.01, 1e-8), df1 = c(1, 2, 3.5, 5, 12), df2 = c(1, 2, 4.07, 8, 15, 65, Inf))
g$f <- qf(g$upper, g$df1, g$df2, lower.tail = FALSE)
put(g, "fisher-f-quantiles.csv", "qf(upper, df1, df2, lower.tail = FALSE)")
g <- expand.grid(x = c(1e-6, 0.1, 0.7, 1, 3, 7.5, 20, 90, 300), df = c(0.5, 1, 2, 3, 9, 25, 80, 300))
g$upper <- pchisq(g$x, g$df, lower.tail = FALSE); g$lower <- pchisq(g$x, g$df); g <- g[g$lower > 1e-305, ]
put(g, "chi-square-tails.csv", "pchisq(x, df)")
g <- expand.grid(upper = c(0.999, 0.9, 0.5, 0.1, 0.05, 0.01, 1e-8, 1e-200), df = c(0.5, 1, 2, 3, 9, 25, 80, 300))
g$x <- qchisq(g$upper, g$df, lower.tail = FALSE)
put(g, "chi-square-quantiles.csv", "qchisq(upper, df, lower.tail = FALSE)")
g <- data.frame(z = c(0, 1e-8, 0.1, 0.5, 1, 1.5, 1.96, 2.5, 3, 4, 5, 6, 8, 12, 20, 30, 37))
g$upper <- pnorm(g$z, lower.tail = FALSE)
put(g, "normal-tails.csv", "pnorm(z, lower.tail = FALSE)")
g <- data.frame(upper = c(0.4999, 0.45, 0.4, 0.3, 0.25, 0.1, 0.05, 0.025, 0.01, 1e-3, 1e-6, 1e-12, 1e-30, 1e-100, 1e-300))
g$z <- qnorm(g$upper, lower.tail = FALSE)
put(g, "normal-quantiles.csv", "qnorm(upper, lower.tail = FALSE)")
g <- rbind(expand.grid(k = c(0, 1, 3, 7, 13, 15), n = c(15, 20), p = c(0.5, 0.03, 0.8)), data.frame(k = c(300, 500, 520, 700), n = 1000, p = 0.5))
g$lower <- pbinom(g$k, g$n, g$p); g$upper <- pbinom(g$k - 1, g$n, g$p, lower.tail = FALSE)
put(g, "binomial-tails.csv", "pbinom(k, n, p) and pbinom(k - 1, n, p, lower.tail = FALSE)")
