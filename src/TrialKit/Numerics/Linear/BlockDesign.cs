using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>Which treatment stood in which block: the additive design block + treatment, checked and factored once.</summary>
/// <remarks>
/// Treatment effects are estimated from what block means leave of the responses and of the treatment indicators
/// (Frisch and Waugh 1933), which is least squares on the whole design with blocks taken out first.
/// </remarks>
internal sealed class BlockDesign
{
    private readonly int[] _block;
    private readonly int[] _treatment;
    private readonly PivotedQr _qr;

    private BlockDesign(int[] block, int[] treatment, int blocks, int treatments)
    {
        (_block, _treatment) = (block, treatment);
        (Blocks, Treatments) = (blocks, treatments);
        BlockSizes = new int[blocks];
        Replicates = new int[treatments];
        for (var i = 0; i < block.Length; i++)
        {
            BlockSizes[block[i]]++;
            Replicates[treatment[i]]++;
        }

        IsComplete = block.Length == blocks * treatments;
        var adjusted = new double[block.Length, treatments];
        for (var i = 0; i < block.Length; i++)
        {
            for (var other = 0; other < block.Length; other++)
            {
                if (block[other] == block[i])
                {
                    adjusted[i, treatment[other]] = -1.0 / BlockSizes[block[i]];
                }
            }

            adjusted[i, treatment[i]] += 1;
        }

        _qr = PivotedQr.Factor(adjusted);
        UnscaledCovariance = _qr.InverseCrossProduct();
    }

    /// <summary>Number of blocks.</summary>
    public int Blocks { get; }

    /// <summary>Number of treatments.</summary>
    public int Treatments { get; }

    /// <summary>Number of observations.</summary>
    public int Observations => _block.Length;

    /// <summary>Observations in each block.</summary>
    public int[] BlockSizes { get; }

    /// <summary>Observations of each treatment.</summary>
    public int[] Replicates { get; }

    /// <summary>Whether each treatment stands in each block.</summary>
    public bool IsComplete { get; }

    /// <summary>Degrees of freedom that blocks and treatments leave.</summary>
    public int ErrorDegrees => Observations - Blocks - Treatments + 1;

    /// <summary>Block of each observation.</summary>
    public ReadOnlySpan<int> Block => _block;

    /// <summary>Treatment of each observation.</summary>
    public ReadOnlySpan<int> Treatment => _treatment;

    /// <summary>A generalised inverse of the treatments' adjusted cross product: covariance of treatment effects by error variance, right for contrasts.</summary>
    public double[,] UnscaledCovariance { get; }

    /// <summary>Checks a design.</summary>
    /// <param name="block">Block of each observation, 0..b-1 without gaps.</param>
    /// <param name="treatment">Treatment of each observation, 0..t-1 without gaps.</param>
    /// <returns>The design.</returns>
    /// <exception cref="ArgumentException">No observation, lengths differ, a level is missing, a treatment stands twice in a block, or some treatments cannot be compared because no chain of blocks joins them.</exception>
    public static BlockDesign Of(ReadOnlySpan<int> block, ReadOnlySpan<int> treatment)
    {
        if (block.IsEmpty)
        {
            throw new ArgumentException("No observation was given; one at least was expected.", nameof(block));
        }

        var blocks = LevelChecks.Count(block, block.Length, nameof(block));
        var treatments = LevelChecks.Count(treatment, block.Length, nameof(treatment));
        var seen = new bool[blocks, treatments];
        for (var i = 0; i < block.Length; i++)
        {
            if (seen[block[i], treatment[i]])
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"Treatment {treatment[i]} stands twice in block {block[i]}; once at most was expected."), nameof(treatment));
            }

            seen[block[i], treatment[i]] = true;
        }

        RequireConnected(seen, nameof(treatment));
        return new BlockDesign(block.ToArray(), treatment.ToArray(), blocks, treatments);
    }

    /// <summary>Fits block + treatment to a response.</summary>
    /// <param name="response">One finite value per observation.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">Another number of values than observations, or a value that is not finite.</exception>
    public BlockFit Fit(ReadOnlySpan<double> response)
    {
        var shifted = Shifted(response, out var shift);
        return IsComplete ? BlockFit.Complete(this, shifted, shift) : BlockFit.ByLeastSquares(this, _qr, shifted, shift);
    }

    /// <summary>Deviations of responses from their block means.</summary>
    /// <param name="response">One finite value per observation.</param>
    /// <returns>One deviation per observation.</returns>
    /// <exception cref="ArgumentException">Another number of values than observations, or a value that is not finite.</exception>
    public double[] Deviations(ReadOnlySpan<double> response) => WithinBlocks(Shifted(response, out _), out _);

    /// <summary>What block means leave of shifted responses.</summary>
    /// <param name="shifted">One value per observation.</param>
    /// <param name="blockMeans">The block means.</param>
    /// <returns>Deviations from block means.</returns>
    public double[] WithinBlocks(ReadOnlySpan<double> shifted, out double[] blockMeans)
    {
        blockMeans = StableSums.LevelMeans(shifted, _block, Blocks);
        var within = shifted.ToArray();
        for (var i = 0; i < within.Length; i++)
        {
            within[i] -= blockMeans[_block[i]];
        }

        return within;
    }

    private double[] Shifted(ReadOnlySpan<double> response, out double shift)
    {
        if (response.Length != Observations)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{response.Length} responses came for {Observations} observations; one for each was expected."), nameof(response));
        }

        Checks.Sample(response, 1);
        return StableSums.Shifted(response, out shift);
    }

    private static void RequireConnected(bool[,] seen, string name)
    {
        var (blocks, treatments) = (seen.GetLength(0), seen.GetLength(1));
        var group = Enumerable.Range(0, treatments).ToArray();
        for (var b = 0; b < blocks; b++)
        {
            var here = Enumerable.Range(0, treatments).Where(t => seen[b, t]).ToArray();
            var joined = here.Select(t => group[t]).ToHashSet();
            var lowest = joined.Min();
            for (var t = 0; t < treatments; t++)
            {
                group[t] = joined.Contains(group[t]) ? lowest : group[t];
            }
        }

        var parts = Enumerable.Range(0, treatments).GroupBy(t => group[t]).Select(part => $"{{{string.Join(", ", part)}}}").ToArray();
        if (parts.Length > 1)
        {
            throw new ArgumentException(
                $"Treatments fall into groups that no block joins: {string.Join(" and ", parts)}; a chain of shared blocks between all treatments was expected.", name);
        }
    }
}
