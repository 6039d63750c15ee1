# A made-up corn strip trial from a fixed seed, and what a script in R makes of each strip.
# Writes strip-trial/{strips,stand-counts,emergence,plants,harvest,expected}.csv; reads weather/seattle-2012-05.csv.
# Run in tests/reference-data:  Rscript generators/strip-trial.R
# Planted 2012-05-01, rows 30 in apart, 34,000 seeds/ac, planting day counted.
# Two searches from many starts are polished with Newton steps on a numerical Hessian until the gradient is below 1e-8 per seed.
set.seed(20120501)
planted <- as.Date("2012-05-01"); row.in <- 30; rate <- 34000
length.ft <- 522.72 / row.in * 1.2 # 40.8 seeds: not a whole number
seeds <- rate / 43560 / 12 * row.in * length.ft
spacing <- 6272640 / (row.in * rate); visits <- c(6, 7, 8, 9, 10, 11, 12, 14, 17)
strips <- stand <- emergence <- plants <- harvest <- NULL
for (s in 1:8) {
  name <- sprintf("S%d", s); treatment <- c("none", "chains")[1 + (s + (s > 4)) %% 2]
  d <- runif(1, .85, .97); e <- runif(1, 8.5, 10.5); b <- runif(1, 9, 14)
  strips <- rbind(strips, data.frame(strip = name, block = (s + 1) %/% 2, treatment = treatment, order = s, length_ft = 1180, width_ft = 20))
  harvest <- rbind(harvest, data.frame(strip = name, weight_lb = round(rnorm(1, 5800, 150)), moisture_pct = round(rnorm(1, 17.5, .5), 1)))
  for (k in 1:3) {
    stand <- rbind(stand, data.frame(strip = name, spot = k, length_ft = 17.424, plants = rbinom(1, 34, d)))
    up <- runif(40) < d; t <- ifelse(up, e * (function(u) u / (1 - u))(runif(40))^(1 / b), Inf)
    emergence <- rbind(emergence, data.frame(strip = name, spot = k, day = visits, plants = sapply(visits, function(v) sum(t <= v))))
    where <- round((which(t <= 17) - .5) * spacing + rnorm(sum(t <= 17), 0, 1), 1)
    plants <- rbind(plants, data.frame(strip = name, spot = k, plant = seq_along(where), position_in = pmax(0, where)))
  }
}
wx <- read.csv("weather/seattle-2012-05.csv", comment.char = "#"); clip <- function(x) pmin(86, pmax(50, x * 1.8 + 32))
corn <- cumsum((clip(wx$tmax_c) + clip(wx$tmin_c)) / 2 - 50); plain <- cumsum(pmax(0, ((wx$tmax_c + wx$tmin_c) / 2 * 1.8 + 32) - 50))
heat <- function(sums, t) approx(0:length(sums), c(0, sums), xout = t)$y
fit <- function(x) {
  n <- aggregate(plants ~ day, x, sum); L <- c(0, head(n$day, -1)); R <- n$day; k <- diff(c(0, n$plants)); total <- 3 * seeds; rest <- total - tail(n$plants, 1)
  F <- function(t, p) ifelse(t <= 0, 0, plogis(p[1]) * plogis(exp(p[2]) * (log(pmax(t, 1e-300)) - p[3])))
  nll <- function(p) { m <- F(R, p) - F(L, p); i <- k > 0; if (any(m[i] <= 0)) return(1e10); -(sum(k[i] * log(m[i])) + rest * log1p(-F(tail(R, 1), p))) }
  best <- NULL
  for (d in c(1, 2, 4)) for (b in log(c(5, 10, 15))) for (e in log(c(8, 9, 10, 11))) {
    o <- try(optim(c(d, b, e), nll, method = "BFGS", control = list(reltol = 1e-15, maxit = 1000)), silent = TRUE)
    if (!inherits(o, "try-error") && (is.null(best) || o$value < best$value)) best <- o }
  grad <- function(p, h = 1e-4) sapply(1:3, function(i) { u <- replace(numeric(3), i, h); (8 * (nll(p + u) - nll(p - u)) - (nll(p + 2 * u) - nll(p - 2 * u))) / (12 * h) })
  hess <- function(p, h = 1e-4) sapply(1:3, function(i) { u <- replace(numeric(3), i, h); (8 * (grad(p + u) - grad(p - u)) - (grad(p + 2 * u) - grad(p - 2 * u))) / (12 * h) })
  p <- best$par; for (i in 1:5) p <- p - solve(hess(p), grad(p))
  stopifnot(max(abs(grad(p))) / total < 1e-8, nll(p) <= best$value + 1e-9)
  V <- solve((hess(p) + t(hess(p))) / 2); d <- plogis(p[1]); b <- exp(p[2]); e <- exp(p[3]); q <- function(s) e * (s / (1 - s))^(1 / b)
  g <- c(0, -(q(.9) + q(.1)) * log(9) / b, q(.9) - q(.1)) # d spread / d (logit d, ln b, ln e)
  data.frame(final = 100 * tail(n$plants, 1) / total, d = d, se_d = d * (1 - d) * sqrt(V[1, 1]), b = b, se_b = b * sqrt(V[2, 2]), e = e, se_e = e * sqrt(V[3, 3]),
    t10 = q(.1), t50 = q(.5), t90 = q(.9), spread = q(.9) - q(.1), se_spread = sqrt(drop(t(g) %*% V %*% g)), heat_t50 = heat(corn, q(.5)), average_heat_t50 = heat(plain, q(.5)),
    heat_spread = heat(corn, q(.9)) - heat(corn, q(.1)), loglik = -nll(p))
}
out <- NULL
for (s in strips$strip) {
  x <- stand[stand$strip == s, ]; h <- harvest[harvest$strip == s, ]; ppa <- x$plants / (x$length_ft * row.in / 12) * 43560
  gaps <- unlist(lapply(split(plants[plants$strip == s, ], plants$spot[plants$strip == s]), function(v) diff(sort(v$position_in))))
  r <- gaps / spacing
  out <- rbind(out, cbind(data.frame(strip = s, stand = mean(ppa), sd_stand = sd(ppa)), fit(emergence[emergence$strip == s, ]),
    data.frame(gaps = length(gaps), spacing = mean(gaps), sd_spacing = sd(gaps), multiples = 100 * mean(r <= .5), singles = 100 * mean(r > .5 & r <= 1.5), missed = 100 * mean(r > 1.5),
      precision = 100 * sd(gaps[r > .5 & r <= 1.5]) / spacing, yield = h$weight_lb / 56 / (1180 * 20 / 43560) * (100 - h$moisture_pct) / (100 - 15.5))))
}
source.line <- paste0("# Written by generators/strip-trial.R (", R.version.string, "); made-up data from a fixed seed")
for (n in c("strips", "stand", "emergence", "plants", "harvest", "out")) {
  f <- file.path("strip-trial", paste0(switch(n, stand = "stand-counts", out = "expected", n), ".csv"))
  x <- get(n); if (n == "out") x[-1] <- lapply(x[-1], format, digits = 15, trim = TRUE)
  writeLines(source.line, f); suppressWarnings(write.table(x, f, append = TRUE, sep = ",", row.names = FALSE, quote = FALSE)) }
