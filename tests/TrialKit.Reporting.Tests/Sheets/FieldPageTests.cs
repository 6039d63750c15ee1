using System.Text;
using Microsoft.Playwright;
using TrialKit.Planning;
using TrialKit.Reporting.Sheets;

namespace TrialKit.Reporting.Tests.Sheets;

/// <summary>The page for a phone in a real browser, opened from disk, at the size of a small phone.</summary>
public class FieldPageTests
{
    private const int Width = 360;
    private const int Height = 740;
    private const int LeastButton = 44;

    /// <summary>The least contrast of any text that shows, by the formula of the Web Content Accessibility Guidelines 2.2; 7 is their strictest level.</summary>
    private const string LeastContrast = """
        (() => {
          const parts = text => text.match(/[\d.]+/g).map(Number);
          const light = ([r, g, b]) => { const [x, y, z] = [r, g, b].map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4); return 0.2126 * x + 0.7152 * y + 0.0722 * z; };
          const ground = e => { for (; e; e = e.parentElement) { const c = parts(getComputedStyle(e).backgroundColor); if (c.length < 4 || c[3] === 1) return c; } return [255, 255, 255]; };
          const shown = [...document.querySelectorAll('body *')].filter(e => e.getClientRects().length && [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()));
          return Math.min(...shown.map(e => { const [a, b] = [light(parts(getComputedStyle(e).color)), light(ground(e))].sort((p, q) => q - p); return (a + 0.05) / (b + 0.05); }));
        })()
        """;

    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    [Fact]
    public async Task Page_TapsThroughTwoStripsWithAReload_ExportsTheTablesOfTheTrial()
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        var page = phone.Page;
        var stops = FieldWalk.Stops(planned.Trial).Take(8).ToArray();
        Assert.Equal(2, stops.Select(stop => stop.Strip).Distinct().Count());

        // A first visit at which nothing is up, with the page loaded anew half-way.
        await page.ClickAsync("#mode-visits");
        for (var i = 0; i < stops.Length; i++)
        {
            if (i == 4)
            {
                await page.ReloadAsync();
            }

            Assert.Equal(i.ToString(System.Globalization.CultureInfo.InvariantCulture), await page.InputValueAsync("#stop"));
            await phone.Type("0");
            await page.ClickAsync("#done");
        }

        // Three days on, the visit is another by itself; a count that falls is said, and what was typed is kept all the same.
        await page.Clock.SetFixedTimeAsync(new DateTime(2026, 5, 13, 17, 30, 0, DateTimeKind.Utc));
        await page.ReloadAsync();
        await page.SelectOptionAsync("#stop", "0");
        Assert.Contains("Last visit: 0", await page.TextContentAsync("#last"), StringComparison.Ordinal);
        for (var i = 0; i < stops.Length; i++)
        {
            await phone.Type(i == 3 ? "27" : $"2{i}");
            await page.ClickAsync("#done");
        }

        await page.Clock.SetFixedTimeAsync(new DateTime(2026, 5, 16, 9, 15, 0, DateTimeKind.Utc));
        await page.ReloadAsync();
        await page.SelectOptionAsync("#stop", "3");
        await phone.Type("26");
        Assert.Contains("Fewer than last time (27)", await page.TextContentAsync("#warning"), StringComparison.Ordinal);
        await page.ReloadAsync();
        Assert.Equal("26", await page.TextContentAsync("#figure"));

        await page.ClickAsync("#mode-counts");
        await page.SelectOptionAsync("#stop", "0");
        for (var i = 0; i < stops.Length; i++)
        {
            await phone.Type($"3{i}");
            await page.ClickAsync("#done");
        }

        await page.ClickAsync("#mode-plants");
        await page.SelectOptionAsync("#stop", "0");
        foreach (var position in new[] { "4.25", "10.5", "11" })
        {
            await phone.Type(position);
            if (position == "11")
            {
                await page.ClickAsync("#note-double");
            }

            await page.ClickAsync("#done");
        }

        var tables = await phone.Export();
        WriteExpected(planned, stops);
        var expected = PlannedTrial.Records(TrialOf(planned, tables: null));
        Assert.Equal(expected, PlannedTrial.Records(TrialOf(planned, tables)));

        // Removed and read in again, the page gives the same files.
        page.Dialog += async (_, dialog) => await dialog.AcceptAsync();
        await page.ClickAsync("#remove");
        Assert.Contains("0 counts, 0 visits, 0 plants", await page.TextContentAsync("#amounts"), StringComparison.Ordinal);
        await page.SetInputFilesAsync("#import", tables.Select(table => new FilePayload { Name = table.Key, MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(table.Value) }));
        await page.WaitForFunctionAsync("document.getElementById('imported').textContent.includes('plants.csv')");
        Assert.Equal(tables, await phone.Export());
        Assert.Empty(phone.Requests);
    }

    [Fact]
    public async Task Page_OnASmallPhone_FitsWithLargeButtonsAndStrongContrast()
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        foreach (var mode in new[] { "counts", "visits", "plants" })
        {
            await phone.Page.ClickAsync($"#mode-{mode}");
            var size = await phone.Page.EvaluateAsync<int[]>("[document.documentElement.scrollWidth, document.documentElement.scrollHeight]");
            Assert.True(size[0] <= Width && size[1] <= Height, $"{mode}: {size[0]} by {size[1]}");
            var small = await phone.Page.EvaluateAsync<string[]>($"[...document.querySelectorAll('button,select,input')].filter(e => e.offsetParent && (e.getBoundingClientRect().height < {LeastButton} || e.getBoundingClientRect().width < {LeastButton})).map(e => e.id || e.textContent)");
            Assert.True(small.Length == 0, $"{mode}: {string.Join(", ", small)}");
            await phone.Page.EvaluateAsync("document.querySelector('main').scrollTop = 0");
            var contrast = await phone.Page.EvaluateAsync<double>(LeastContrast);
            Assert.True(contrast >= 7, FormattableString.Invariant($"{mode}: contrast {contrast}"));
            if (mode == "visits")
            {
                await ShowAFallingCount(phone);
            }

            if (mode == "plants")
            {
                await ShowAPlantBeforeTheLast(phone);
            }

            await phone.Picture($"field-page-{mode}");
        }

        await phone.Page.ClickAsync("#open-tables");
        await phone.Picture("field-page-tables");
    }

    [Fact]
    public async Task Page_ForeignTable_IsRefusedAndRowsOfNoStopAreCounted()
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        await phone.Page.ClickAsync("#open-tables");
        await phone.Page.SetInputFilesAsync("#import", new[]
        {
            Payload("yield.csv", "strip,yield\nS01,180\n"),
            Payload("stand-counts.csv", "strip,spot,date,length_ft,plants,rows,planter_row\nS01,A,2026-05-20,17.424,30,1,4\nS01,B,2026-05-20,17.424,1x,1,4\nS01,C,5/20/2026,17.424,31,1,4\nS99,A,2026-05-20,17.424,30,1,4\n"),
        });
        await phone.Page.WaitForFunctionAsync("document.getElementById('imported').textContent.includes('stand-counts.csv')");

        var told = await phone.Page.TextContentAsync("#imported");
        Assert.Contains("yield.csv: not a table saved by this page", told, StringComparison.Ordinal);
        Assert.Contains("1 rows read, 1 rows belong to no stop of this trial, 1 rows hold no number where one was expected, 1 rows hold no date such as 2026-05-10", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_OlderOrOtherTable_DoesNotTakeThePlaceOfWhatIsThereUnasked()
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        await phone.Type("30");
        await phone.Page.ClickAsync("#open-tables");
        const string Head = "strip,spot,date,length_ft,plants,rows,planter_row\n";
        var (strip, spot) = (FieldWalk.Stops(planned.Trial)[0].Strip, FieldWalk.Stops(planned.Trial)[0].Spot);

        await Import($"{Head}{strip},{spot},2026-05-09,17.424,12,1,4\n", "1 older than what is on this phone, which is kept");
        Assert.Equal("30", await phone.Page.TextContentAsync("#figure"));
        await Import($"{Head}{strip},{spot},2026-05-10,17.424,13,1,4\n", "1 differ from what is on this phone, which is kept");
        Assert.Equal("30", await phone.Page.TextContentAsync("#figure"));
        var asked = string.Empty;
        phone.Page.Dialog += async (_, dialog) =>
        {
            asked = dialog.Message;
            await dialog.AcceptAsync();
        };
        await Import($"{Head}{strip},{spot},2026-05-10,17.424,13,1,4\n", "1 rows read.");
        Assert.Contains("differs from this phone in 1 row", asked, StringComparison.Ordinal);
        Assert.Equal("13", await phone.Page.TextContentAsync("#figure"));
        await Import($"{Head}{strip},{spot},2026-05-11,17.424,31,1,4\n", "1 rows read.");
        Assert.Equal("31", await phone.Page.TextContentAsync("#figure"));

        async Task Import(string table, string told)
        {
            await phone.Page.SetInputFilesAsync("#import", Payload("stand-counts.csv", table));
            await Assertions.Expect(phone.Page.Locator("#imported")).ToContainTextAsync(told);
        }
    }

    [Fact]
    public async Task Page_DateOfAVisitPutRight_MovesItsCounts()
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        await phone.Page.ClickAsync("#mode-visits");
        await phone.Type("7");
        await phone.Page.ClickAsync("#done");
        await phone.Type("8");
        await phone.Page.FillAsync("#visit-at", "2026-05-09T16:30");

        Assert.Contains("2 counts move", await phone.Page.TextContentAsync("#warning"), StringComparison.Ordinal);
        var visits = (await phone.Export())["emergence.csv"].Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(3, visits.Length);
        Assert.All(visits.Skip(1), line => Assert.Contains(",2026-05-09 16:30,", line, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Page_StrayTouchOnAStandCount_KeepsCountAndDay()
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        await phone.Type("30");
        var before = (await phone.Export())["stand-counts.csv"];
        await phone.Page.ClickAsync("#close-tables");
        await phone.Page.Clock.SetFixedTimeAsync(new DateTime(2026, 5, 16, 9, 15, 0, DateTimeKind.Utc));
        await phone.Page.ReloadAsync();
        Assert.Equal("2026-05-10", await phone.Page.InputValueAsync("#count-on"));
        await phone.Type("5");
        await phone.Page.ClickAsync("[data-key='back']");
        Assert.Equal(before, (await phone.Export())["stand-counts.csv"]);
        await phone.Page.ClickAsync("#close-tables");

        // A figure typed over another takes its place; the day changes only when that is asked for.
        await phone.Type("31");
        Assert.Equal("31", await phone.Page.TextContentAsync("#figure"));
        Assert.Equal("2026-05-10", await phone.Page.InputValueAsync("#count-on"));
        await phone.Page.ClickAsync("#count-today");
        Assert.Contains(",2026-05-16,17.424,31,", (await phone.Export())["stand-counts.csv"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_FallingCount_IsSaidOnceItIsWholeAndFromBothSides()
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        await phone.Page.ClickAsync("#mode-visits");
        await phone.Type("27");
        await phone.Page.Clock.SetFixedTimeAsync(new DateTime(2026, 5, 13, 17, 30, 0, DateTimeKind.Utc));
        await phone.Page.ClickAsync("#visit-new");
        await phone.Type("2");
        Assert.Empty((await phone.Page.TextContentAsync("#warning"))!);
        await Assertions.Expect(phone.Page.Locator("#warning")).ToContainTextAsync("Fewer than last time (27)");
        await phone.Type("9");
        Assert.Empty((await phone.Page.TextContentAsync("#warning"))!);

        // A hasty one is held up once.
        await phone.Page.ClickAsync("#next");
        await phone.Page.ClickAsync("#back");
        await phone.Type("3");
        await phone.Page.ClickAsync("#done");
        Assert.Equal("0", await phone.Page.InputValueAsync("#stop"));
        Assert.Contains("Fewer", await phone.Page.TextContentAsync("#warning"), StringComparison.Ordinal);
        await phone.Page.ClickAsync("#done");
        Assert.Equal("1", await phone.Page.InputValueAsync("#stop"));

        await phone.Page.ClickAsync("#back");
        await phone.Page.FillAsync("#visit-at", "2026-05-10T17:00");
        Assert.Equal("27", await phone.Page.TextContentAsync("#figure"));
        await phone.Page.ClickAsync("#next");
        await phone.Page.ClickAsync("#back");
        Assert.Contains("More than at the visit after it (3, 2026-05-13 17:30)", await phone.Page.TextContentAsync("#warning"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-05-03T10:00", "before planting (2026-05-04)")]
    [InlineData("2030-05-12T10:00", "still to come")]
    public async Task Page_ImpossibleDateOfAVisit_IsSaid(string date, string warning)
    {
        using var planned = new PlannedTrial();
        await using var phone = await Phone.Open(planned);
        await phone.Page.ClickAsync("#mode-visits");
        await phone.Page.FillAsync("#visit-at", date);

        Assert.Contains(warning, await phone.Page.TextContentAsync("#warning"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_EntriesOfAPlan_AreKeptUnderItsMark()
    {
        using var planned = new PlannedTrial(passes: 2);
        var plain = Id();
        File.WriteAllText(planned.In("plan.toml"), "seed = 42\nid = \"0123456789abcdef\"\n");
        var marked = Id();
        File.WriteAllText(planned.In("trial.toml"), File.ReadAllText(planned.In("trial.toml")).Replace("date = 2026-05-04", "date = 2026-05-06", StringComparison.Ordinal).Replace("Drag chains", "Chains", StringComparison.Ordinal));
        Assert.Equal(marked, Id());
        File.WriteAllText(planned.In("plan.toml"), "seed = 43\nid = \"fedcba9876543210\"\n");
        Assert.Equal(3, new[] { plain, marked, Id() }.Distinct().Count());

        string Id()
        {
            using var stream = new MemoryStream();
            FieldPage.Write(planned.Read(), stream);
            var text = Encoding.UTF8.GetString(stream.ToArray());
            Assert.Contains("\"pass\":1,\"row\":", text, StringComparison.Ordinal);
            var start = text.IndexOf("const trial = {\"id\":\"", StringComparison.Ordinal);
            return text.Substring(start, 40);
        }
    }

    [Fact]
    public void Write_Page_IsOneFileThatAsksForNothing()
    {
        using var planned = new PlannedTrial();
        using var stream = new MemoryStream();
        FieldPage.Write(planned.Trial, stream);
        var text = Encoding.UTF8.GetString(stream.ToArray());

        Assert.DoesNotContain("http://", text, StringComparison.Ordinal);
        Assert.DoesNotContain("https://", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/*TRIAL*/", text, StringComparison.Ordinal);
        Assert.Contains("default-src 'none'", text, StringComparison.Ordinal);
    }

    private static async Task ShowAFallingCount(Phone phone)
    {
        await phone.Type("14");
        await phone.Page.Clock.SetFixedTimeAsync(new DateTime(2026, 5, 13, 17, 30, 0, DateTimeKind.Utc));
        await phone.Page.ClickAsync("#visit-new");
        await phone.Type("12");
        Assert.Contains("Fewer", await phone.Page.TextContentAsync("#warning"), StringComparison.Ordinal);
        Assert.True(await phone.Page.EvaluateAsync<bool>("document.getElementById('warning').getBoundingClientRect().bottom <= document.getElementById('keys').getBoundingClientRect().top"), "the keys cover the warning");
    }

    private static async Task ShowAPlantBeforeTheLast(Phone phone)
    {
        foreach (var position in new[] { "4.25", "10.5", "22" })
        {
            await phone.Type(position);
            await phone.Page.ClickAsync("#done");
        }

        await phone.Type("9");
        Assert.Contains("Before the last plant", await phone.Page.TextContentAsync("#warning"), StringComparison.Ordinal);
        var list = await phone.Page.EvaluateAsync<double>("document.getElementById('plants').getBoundingClientRect().height");
        Assert.True(list >= LeastButton, FormattableString.Invariant($"the list of plants is {list} high"));
        Assert.True(await phone.Page.EvaluateAsync<bool>("(e => e.scrollWidth <= e.clientWidth)(document.getElementById('where'))"), "the place is cut");
        Assert.True(await phone.Page.EvaluateAsync<bool>("document.getElementById('plants').getBoundingClientRect().top + 44 <= document.getElementById('keys').getBoundingClientRect().top"), "the keys cover the plants");
    }

    private static FilePayload Payload(string name, string text) => new() { Name = name, MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(text) };

    /// <summary>The trial of the planned folder with the tables that were exported, or with those that lie there.</summary>
    private static Trials.StripTrial TrialOf(PlannedTrial planned, IReadOnlyDictionary<string, string>? tables)
    {
        foreach (var (name, text) in tables ?? new Dictionary<string, string>())
        {
            File.WriteAllText(planned.In(name), text);
        }

        var reading = Ingest.TrialReader.Read(planned.Folder);
        Assert.True(reading.Trial is not null, string.Join('\n', reading.Problems));
        Assert.All(reading.Problems, problem => Assert.Equal("TK334", problem.Code));
        return reading.Trial;
    }

    private static void WriteExpected(PlannedTrial planned, WalkStop[] stops)
    {
        var counts = new StringBuilder("strip,spot,date,length_ft,plants,planter_row\n");
        var visits = new StringBuilder("strip,spot,date,plants,length_ft\n");
        for (var i = 0; i < stops.Length; i++)
        {
            counts.Append(FormattableString.Invariant($"{stops[i].Strip},{stops[i].Spot},2026-05-16,17.424,3{i},{stops[i].PlanterRow}\n"));
            visits.Append(FormattableString.Invariant($"{stops[i].Strip},{stops[i].Spot},2026-05-10 17:00,0,17.424\n"));
            visits.Append(FormattableString.Invariant($"{stops[i].Strip},{stops[i].Spot},2026-05-13 17:30,{(i == 3 ? 27 : 20 + i)},17.424\n"));
            if (i == 3)
            {
                visits.Append(FormattableString.Invariant($"{stops[i].Strip},{stops[i].Spot},2026-05-16 09:15,26,17.424\n"));
            }
        }

        var first = stops[0];
        File.WriteAllText(planned.In("stand-counts.csv"), counts.ToString());
        File.WriteAllText(planned.In("emergence.csv"), visits.ToString());
        File.WriteAllText(planned.In("plants.csv"), $"strip,spot,plant,position_in,note\n{first.Strip},{first.Spot},1,4.25,\n{first.Strip},{first.Spot},2,10.5,\n{first.Strip},{first.Spot},3,11,double\n");
    }

    private sealed class Phone : IAsyncDisposable
    {
        private readonly IPlaywright playwright;
        private readonly IBrowser browser;

        private Phone(IPlaywright playwright, IBrowser browser, IPage page) => (this.playwright, this.browser, Page) = (playwright, browser, page);

        public IPage Page { get; }

        /// <summary>Whatever the page asked of a network.</summary>
        public List<string> Requests { get; } = [];

        public static async Task<Phone> Open(PlannedTrial planned)
        {
            var chromium = Array.Find(Places, File.Exists);
            if (chromium is null)
            {
                Assert.Skip($"No browser was found at {string.Join(", ", Places)}; the page for a phone is tested only in a real one.");
            }

            var file = planned.In("field-page.html");
            await using (var stream = File.Create(file))
            {
                FieldPage.Write(planned.Trial, stream);
            }

            var driver = await Playwright.CreateAsync();
            var launched = await driver.Chromium.LaunchAsync(new() { ExecutablePath = chromium, Args = ["--no-sandbox"] });
            var context = await launched.NewContextAsync(new() { ViewportSize = new() { Width = Width, Height = Height }, HasTouch = true, IsMobile = true, DeviceScaleFactor = 2, AcceptDownloads = true, TimezoneId = "UTC", Offline = true });
            var page = await context.NewPageAsync();
            var phone = new Phone(driver, launched, page);
            page.Request += (_, request) =>
            {
                if (!request.Url.StartsWith("file:", StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal))
                {
                    phone.Requests.Add(request.Url);
                }
            };
            await page.Clock.SetFixedTimeAsync(new DateTime(2026, 5, 10, 17, 0, 0, DateTimeKind.Utc));
            await page.GotoAsync(new Uri(file).AbsoluteUri);
            return phone;
        }

        public async Task Type(string keys)
        {
            foreach (var key in keys)
            {
                await Page.TapAsync($"[data-key='{key}']");
            }
        }

        public async Task<SortedDictionary<string, string>> Export()
        {
            var tables = new SortedDictionary<string, string>(StringComparer.Ordinal);
            if (!await Page.IsVisibleAsync("#tables"))
            {
                await Page.ClickAsync("#open-tables");
            }

            foreach (var kind in new[] { "counts", "visits", "plants" })
            {
                var download = await Page.RunAndWaitForDownloadAsync(() => Page.ClickAsync($"#export-{kind}"));
                tables.Add(download.SuggestedFilename, await File.ReadAllTextAsync(await download.PathAsync()));
            }

            return tables;
        }

        /// <summary>Keeps a picture for the eye, where a folder for pictures is named.</summary>
        public async Task Picture(string name)
        {
            if (Environment.GetEnvironmentVariable("TRIALKIT_PICTURES") is { Length: > 0 } folder)
            {
                await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png") });
            }
        }

        public async ValueTask DisposeAsync()
        {
            await browser.CloseAsync();
            playwright.Dispose();
        }
    }
}
