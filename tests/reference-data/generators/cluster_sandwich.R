# The sandwich covariance of clustered_strips_sim (interval_censored.json) with strips as clusters, from central differences of the log-likelihood.
# survival 3.5.3 is used for the estimates and the inverse information only: for interval-censored rows residuals(type = "matrix") gives
# the derivative in log(scale) with the wrong sign, so the robust variance of survreg(... + cluster()) is not the sandwich (compare ds with the differences below).
# Usage: Rscript cluster_sandwich.R rows.csv > clustered_sandwich.csv ; rows.csv holds L,R,trt,strip with R = NA for right-censored.
suppressMessages(library(survival))
d <- read.csv(commandArgs(TRUE)[1])
x <- as.integer(d$trt == "B")
L2 <- ifelse(d$L == 0, NA, d$L)
cat("# R 4.2.2, survival 3.5.3; generator cluster_sandwich.R; no small-sample factor\n")
cat("distribution,intercept,effect,log_scale\n")
tails <- list(loglogistic = function(z) plogis(-z), lognormal = function(z) pnorm(-z), weibull = function(z) exp(-exp(z)))
for (ds in names(tails)) {
  fit <- survreg(Surv(L2, d$R, type = "interval2") ~ x, dist = ds, control = survreg.control(rel.tolerance = 1e-14, maxiter = 200))
  loglik <- function(th) {
    z <- function(t) (log(t) - th[1] - th[2] * x) / exp(th[3])
    after <- ifelse(is.na(d$R), 0, tails[[ds]](z(d$R)))
    before <- ifelse(d$L == 0, 1, tails[[ds]](z(d$L)))
    log(before - after)
  }
  at <- c(coef(fit), log(fit$scale))
  h <- 1e-5
  score <- sapply(1:3, function(k) { e <- replace(numeric(3), k, h); (loglik(at + e) - loglik(at - e)) / (2 * h) })
  strips <- rowsum(score, d$strip)
  cat(ds, format(sqrt(diag(fit$var %*% crossprod(strips) %*% fit$var)), digits = 12), sep = ",")
  cat("\n")
}
