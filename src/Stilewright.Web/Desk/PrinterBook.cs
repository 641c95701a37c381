using System.Text;
using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>The shop's printer: what was measured on its prints, so that the next ones come out true whoever asks for them.</summary>
public sealed class PrinterBook(IDbContextFactory<StoreContext> store, TimeProvider clock) : IDisposable
{
    private const string ShopPrinter = "printer";
    private readonly SemaphoreSlim gate = new(1, 1);

    public void Dispose() => gate.Dispose();

    /// <summary>The printer with all that is remembered of it; null where that is nothing.</summary>
    public async Task<Printer?> FindAsync(CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        return await Printers(db).Join(db.Revisions, document => new { DocumentKey = document.Key, Number = document.Head }, revision => new { revision.DocumentKey, revision.Number },
            (_, revision) => revision.Json).AsNoTracking().SingleOrDefaultAsync(stop) is { } json && Read(json) is { Measured.Count: > 0 } printer ? printer : null;
    }

    /// <summary>Adds a print that was measured; it was made with what is remembered before it.</summary>
    public Task<Printer> RememberAsync(PrintMeasurement measured, string authorId, CancellationToken stop = default) =>
        SaveAsync(printer => printer with { Measured = [.. printer.Measured, measured] }, authorId, stop);

    /// <summary>Begins anew, as with another printer. What was measured stays in the history of the file.</summary>
    public Task ForgetAsync(string authorId, CancellationToken stop = default) => SaveAsync(printer => printer with { Measured = [] }, authorId, stop);

    private async Task<Printer> SaveAsync(Func<Printer, Printer> edit, string authorId, CancellationToken stop)
    {
        await gate.WaitAsync(stop);
        try
        {
            var printer = edit(await FindAsync(stop) ?? new Printer(ShopPrinter, "the shop's printer", LengthUnit.Inch, []));
            await using var db = await store.CreateDbContextAsync(stop);
            await using var transaction = await db.Database.BeginTransactionAsync(stop);
            var document = await Printers(db).SingleOrDefaultAsync(stop);
            if (document is null)
                db.Documents.Add(document = new() { Kind = DocumentKind.Printer, RecordId = ShopPrinter, Head = 0 });
            document.Head++;
            await db.SaveChangesAsync(stop);
            db.Revisions.Add(new()
            {
                DocumentKey = document.Key,
                Number = document.Head,
                BasedOn = document.Head - 1,
                Json = Encoding.UTF8.GetString(DocumentWriter.Write(printer)),
                Changes = "[]",
                FormatVersion = DocumentFormat.Printer.Version,
                ProgramVersion = ProgramVersion.Text,
                AuthorId = authorId,
                MadeAt = clock.GetUtcNow().UtcDateTime,
                Cause = RevisionCause.Edit,
            });
            await db.SaveChangesAsync(stop);
            await transaction.CommitAsync(stop);
            return printer;
        }
        finally
        {
            gate.Release();
        }
    }

    private static IQueryable<StoredDocument> Printers(StoreContext db) =>
        db.Documents.Where(document => document.Kind == DocumentKind.Printer && document.RecordId == ShopPrinter);

    // What the store holds was sound when it was saved.
    private static Printer Read(string json) => DocumentReader.ReadPrinter(json) is DocumentResult<Printer>.Read read
        ? read.Document : throw new InvalidDataException("The stored printer cannot be read.");
}
