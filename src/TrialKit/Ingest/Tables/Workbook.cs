using System.IO.Compression;
using MiniExcelLibs;
using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Tables;

/// <summary>The workbook <c>trial.xlsx</c>, whose sheets stand in for the tables' files.</summary>
internal sealed class Workbook
{
    /// <summary>The workbook's file name.</summary>
    public const string FileName = "trial.xlsx";

    /// <summary>The largest size all parts of the workbook may have together when unpacked, in bytes.</summary>
    public const long LargestUnpacked = 1L << 30;

    private readonly string _path;

    private Workbook(string path, IReadOnlyList<string> sheets)
    {
        _path = path;
        Sheets = sheets;
    }

    /// <summary>The sheets' names, in their order.</summary>
    public IReadOnlyList<string> Sheets { get; }

    /// <summary>Opens the workbook when there is one.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="problems">Takes a file that is too large or is not a workbook.</param>
    /// <param name="largestUnpacked">The limit on its unpacked size in bytes.</param>
    /// <returns>Null when there is none, or none that can be read.</returns>
    public static Workbook? Open(string folder, ProblemList problems, long largestUnpacked = LargestUnpacked)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path))
        {
            return null;
        }

        var length = new FileInfo(path).Length;
        if (length > Utf8Text.LongestFile)
        {
            problems.Add(FileProblems.TooLong(FileName, length));
            return null;
        }

        try
        {
            if (UnpacksBeyond(path, largestUnpacked))
            {
                problems.Add(FileProblems.Expands(FileName));
                return null;
            }

            return new Workbook(path, MiniExcel.GetSheetNames(path));
        }
        catch (Exception exception) when (exception is UnauthorizedAccessException or (IOException and not EndOfStreamException))
        {
            problems.Add(FileProblems.Unreadable(FileName, exception.Message));
            return null;
        }
        catch (Exception exception) when (exception is not OutOfMemoryException)
        {
            problems.Add(FileProblems.NotWorkbook(FileName, exception.Message));
            return null;
        }
    }

    /// <summary>Reads one sheet.</summary>
    /// <returns>The table, or null with an error added.</returns>
    public SheetTable? Read(string sheet, string name, ProblemList problems)
    {
        List<ICollection<object?>> rows;
        try
        {
            // A damaged archive or its XML makes the package throw almost anything; all of it means that the sheet cannot be read.
            rows = [.. MiniExcel.Query(_path, useHeaderRow: false, sheetName: sheet)
                .Cast<IDictionary<string, object?>>()
                .Select(row => row.Values)];
        }
        catch (Exception exception) when (exception is not OutOfMemoryException)
        {
            problems.Add(FileProblems.NotWorkbook(FileName, exception.Message));
            return null;
        }

        return SheetTable.Read(FileName, sheet, name, rows, problems);
    }

    /// <summary>Whether the parts unpack to more than the limit: by the sizes the archive declares, then by unpacking, since a declared size may lie.</summary>
    private static bool UnpacksBeyond(string path, long limit)
    {
        using var archive = ZipFile.OpenRead(path);
        if (archive.Entries.Sum(entry => (decimal)entry.Length) > limit)
        {
            return true;
        }

        var buffer = new byte[81920];
        var total = 0L;
        foreach (var entry in archive.Entries)
        {
            using var part = entry.Open();
            for (var read = part.Read(buffer); read > 0; read = part.Read(buffer))
            {
                total += read;
                if (total > limit)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
