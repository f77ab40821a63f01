using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store;

/// <summary>The tables of the store, the same for both databases.</summary>
internal abstract class StoreContext(DbContextOptions options) : DbContext(options)
{
    public DbSet<StationRow> Stations => Set<StationRow>();

    public DbSet<EditRow> Edits => Set<EditRow>();

    public DbSet<FileEditRow> FileEdits => Set<FileEditRow>();

    public DbSet<VersionRow> Versions => Set<VersionRow>();

    public DbSet<FileRow> Files => Set<FileRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<StationRow>(row =>
        {
            row.ToTable("station").HasKey(each => each.Id);
            row.Property(each => each.Id).ValueGeneratedNever();
            row.Property(each => each.EditNumber).IsConcurrencyToken();
        });
        modelBuilder.Entity<EditRow>(row =>
        {
            row.ToTable("edit").HasKey(each => new { each.StationId, each.Number });
            row.HasOne<StationRow>().WithMany().HasForeignKey(each => each.StationId);
        });
        modelBuilder.Entity<FileEditRow>(row =>
        {
            row.ToTable("file_edit")
                .HasKey(each => new
                {
                    each.StationId,
                    each.Number,
                    each.Name,
                });
            row.HasOne<EditRow>().WithMany().HasForeignKey(each => new { each.StationId, each.Number });
        });
        modelBuilder.Entity<VersionRow>(row =>
        {
            row.ToTable("version").HasKey(each => new { each.StationId, each.Number });
            row.HasOne<StationRow>().WithMany().HasForeignKey(each => each.StationId);
        });
        modelBuilder.Entity<FileRow>(row =>
        {
            row.ToTable("file").HasKey(each => new { each.StationId, each.Name });
            row.HasOne<StationRow>().WithMany().HasForeignKey(each => each.StationId);
        });
    }
}

/// <summary>The store in a file of this computer.</summary>
internal sealed class SqliteContext(DbContextOptions<SqliteContext> options) : StoreContext(options);

/// <summary>The store in a PostgreSQL database.</summary>
internal sealed class PostgresContext(DbContextOptions<PostgresContext> options) : StoreContext(options);
